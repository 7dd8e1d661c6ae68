package kingpost.kernel.session;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import kingpost.kernel.message.Reply;

/**
 * What the kernel takes of the machine: memory in bytes that this process and those below it hold, processors in per
 * cent of one. Where the system does not tell, only this process is counted.
 *
 * <p>Source: {@code usage_request} is no part of the protocol's document; the fields are those that the reference
 * kernel sends and resource panels of front ends read.
 */
final class KernelUsage {

    private static final double PER_CENT = 100;
    private static final long KIBIBYTE = 1_024;

    private final OperatingSystemMXBean system =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private long lastTime = System.nanoTime();
    private long lastBusy = busyNanos();

    /** Handles usage_request; shell and control may both ask. */
    Optional<Reply> answer(Exchange exchange) {
        long total = system.getTotalMemorySize();
        long available = readKibibytes(Path.of("/proc/meminfo"), "MemAvailable:").orElse(system.getFreeMemorySize());
        Map<String, Object> memory = new LinkedHashMap<>();
        memory.put("total", total);
        memory.put("available", available);
        memory.put("used", total - available);
        memory.put("free", system.getFreeMemorySize());
        memory.put("percent", rounded(PER_CENT * (total - available) / total));
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("status", "ok");
        fields.put("hostname", hostname());
        fields.put("pid", ProcessHandle.current().pid());
        fields.put("kernel_cpu", processorShare());
        fields.put("kernel_memory", processes().map(KernelUsage::residentBytes).sum());
        fields.put("cpu_count", Runtime.getRuntime().availableProcessors());
        fields.put("host_cpu_percent", rounded(PER_CENT * Math.max(0, system.getCpuLoad())));
        fields.put("host_virtual_memory", memory);
        return Optional.of(new Reply.Plain("usage_reply", fields));
    }

    /** Since it was asked last; the first time, since it exists. */
    private synchronized double processorShare() {
        long now = System.nanoTime();
        long busy = busyNanos();
        double share = PER_CENT * Math.max(0, busy - lastBusy) / Math.max(1, now - lastTime);
        lastTime = now;
        lastBusy = busy;
        return rounded(share);
    }

    private static long busyNanos() {
        return processes().map(pid -> ProcessHandle.of(pid).flatMap(process -> process.info().totalCpuDuration())
                .map(Duration::toNanos).orElse(0L)).sum();
    }

    private static LongStream processes() {
        ProcessHandle self = ProcessHandle.current();
        return LongStream.concat(LongStream.of(self.pid()), self.descendants().mapToLong(ProcessHandle::pid));
    }

    private static long residentBytes(long pid) {
        return readKibibytes(Path.of("/proc/" + pid + "/status"), "VmRSS:").orElseGet(() ->
                pid == ProcessHandle.current().pid() ? Runtime.getRuntime().totalMemory() : 0);
    }

    private static Optional<Long> readKibibytes(Path file, String name) {
        try {
            return Files.readAllLines(file).stream().filter(line -> line.startsWith(name)).findFirst()
                    .map(line -> KIBIBYTE * Long.parseLong(line.replaceAll("\\D", "")));
        } catch (IOException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static String hostname() {
        try {
            return Files.readString(Path.of("/proc/sys/kernel/hostname")).trim();
        } catch (IOException e) {
            return Optional.ofNullable(System.getenv("COMPUTERNAME")).orElse("localhost");
        }
    }

    private static double rounded(double value) {
        return Math.rint(10 * value) / 10;
    }
}
