package kingpost.kernel.recheck;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Optional;
import javax.imageio.ImageIO;

/** Compares pictures made of dots as the eye does: by their size, and by how light and of which colour their parts are. */
final class PictureComparison {

    /** Parts along each side. Letters that another JDK smooths in another way look the same at this distance. */
    private static final int PARTS = 24;

    /** Steps of 256 by which the mean of a part may differ. */
    private static final double SAME = 20;

    /** The same where the drawing itself stands beside and is compared: other fonts may have been at hand. */
    private static final double SAME_BESIDE_DRAWING = 90;

    private PictureComparison() {
    }

    /**
     * What differs between two pictures in Base64.
     *
     * @param drawn whether they stand for a drawing that is compared as well
     */
    static Optional<String> difference(String saved, String now, boolean drawn) {
        if (saved.replaceAll("\\s", "").equals(now.replaceAll("\\s", ""))) {
            return Optional.empty();
        }
        BufferedImage before = picture(saved);
        BufferedImage after = picture(now);
        if (before == null || after == null) {
            return Optional.of(before == after ? "its bytes differ" : (before == null ? "the saved one" : "the new one")
                    + " cannot be read");
        }
        if (before.getWidth() != after.getWidth() || before.getHeight() != after.getHeight()) {
            return Optional.of(size(before) + " dots were saved, now it is " + size(after));
        }
        for (int i = 0; i < PARTS; i++) {
            for (int k = 0; k < PARTS; k++) {
                double[] one = mean(before, i, k);
                double[] other = mean(after, i, k);
                for (int colour = 0; colour < one.length; colour++) {
                    if (Math.abs(one[colour] - other[colour]) > (drawn ? SAME_BESIDE_DRAWING : SAME)) {
                        return Optional.of("it looks otherwise, first " + Math.round(100.0 * i / PARTS) + " % from the left and "
                                + Math.round(100.0 * k / PARTS) + " % from the top");
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static String size(BufferedImage picture) {
        return picture.getWidth() + " by " + picture.getHeight();
    }

    private static BufferedImage picture(String base64) {
        try {
            return ImageIO.read(new ByteArrayInputStream(Base64.getMimeDecoder().decode(base64)));
        } catch (IOException | IllegalArgumentException e) {
            return null;
        }
    }

    /** Mean of red, green and blue over one part, on white. */
    private static double[] mean(BufferedImage picture, int column, int row) {
        int left = column * picture.getWidth() / PARTS;
        int right = Math.max(left + 1, (column + 1) * picture.getWidth() / PARTS);
        int top = row * picture.getHeight() / PARTS;
        int bottom = Math.max(top + 1, (row + 1) * picture.getHeight() / PARTS);
        double[] sums = new double[3];
        int dots = 0;
        for (int y = top; y < Math.min(bottom, picture.getHeight()); y++) {
            for (int x = left; x < Math.min(right, picture.getWidth()); x++) {
                int dot = picture.getRGB(x, y);
                int opaque = dot >>> 24;
                for (int colour = 0; colour < 3; colour++) {
                    int value = dot >> (16 - 8 * colour) & 0xff;
                    sums[colour] += (value * opaque + 255 * (255 - opaque)) / 255.0;
                }
                dots++;
            }
        }
        for (int colour = 0; colour < 3; colour++) {
            sums[colour] /= Math.max(1, dots);
        }
        return sums;
    }
}
