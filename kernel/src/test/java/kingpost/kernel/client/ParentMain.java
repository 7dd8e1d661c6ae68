package kingpost.kernel.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A front end's process: starts a kernel by this command, prints the kernel's process number, and waits to be killed. */
public final class ParentMain {

    private ParentMain() { }

    public static void main(String[] command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command);
        Map<String, String> environment = builder.environment();
        environment.put("JPY_PARENT_PID", String.valueOf(ProcessHandle.current().pid()));
        environment.put("KINGPOST_HISTORY", "off");
        Process kernel = builder.inheritIO().redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        System.out.println(kernel.pid());
        kernel.waitFor();
    }

    /** This VM's Java and class path, another main class. */
    public static List<String> javaCommand(Class<?> main, List<String> arguments) {
        List<String> command = new ArrayList<>(List.of(ProcessHandle.current().info().command().orElse("java"),
                "-Xmx64m", "-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(arguments);
        return command;
    }
}
