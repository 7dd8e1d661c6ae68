package kingpost.kernel.frontend;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The public test suite for kernels. */
@Tag("clients")
class KernelSuiteIT {

    @TempDir
    Path home;

    @Test
    void passesEveryTestOfThePublicSuite() {
        FrontEnd frontEnd = FrontEnd.with(home, "jupyter_kernel_test");
        System.out.println(frontEnd.script(240, "kernel_suite.py").expectSuccess().output());
    }
}
