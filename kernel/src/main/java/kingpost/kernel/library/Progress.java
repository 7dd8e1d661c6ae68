package kingpost.kernel.library;

import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.aether.transfer.AbstractTransferListener;
import org.eclipse.aether.transfer.TransferEvent;
import org.eclipse.aether.transfer.TransferResource;

/** Tells of each jar that is fetched, with its size; large ones while they come. */
final class Progress extends AbstractTransferListener {

    private static final long STEP = 4L << 20;

    private final Consumer<String> line;

    Progress(Consumer<String> line) {
        this.line = line;
    }

    @Override
    public void transferProgressed(TransferEvent event) {
        long all = event.getResource().getContentLength();
        long before = event.getTransferredBytes() - event.getDataLength();
        if (all > 2 * STEP && before / STEP != event.getTransferredBytes() / STEP) {
            line.accept(name(event.getResource()) + ": " + megabytes(event.getTransferredBytes()) + " of "
                    + megabytes(all));
        }
    }

    @Override
    public void transferSucceeded(TransferEvent event) {
        if (event.getRequestType() == TransferEvent.RequestType.GET && name(event.getResource()).endsWith(".jar")) {
            line.accept("Fetched " + name(event.getResource()) + " (" + megabytes(event.getTransferredBytes()) + ")");
        }
    }

    private static String name(TransferResource resource) {
        String path = resource.getResourceName();
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private static String megabytes(long bytes) {
        return bytes < 100_000 ? (bytes + 999) / 1000 + " KB" : String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
    }
}
