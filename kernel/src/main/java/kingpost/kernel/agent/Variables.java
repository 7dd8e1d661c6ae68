package kingpost.kernel.agent;

import java.lang.reflect.Field;
import java.util.List;
import java.util.Optional;

/** The cells' variables, which JShell keeps in static fields. */
final class Variables {

    private final CellLoader loader;

    Variables(CellLoader loader) {
        this.loader = loader;
    }

    /** A variable's value; empty when it is null or not there. */
    Optional<Object> value(String className, String fieldName) {
        try {
            return Optional.ofNullable(field(className, fieldName).get(null));
        } catch (ReflectiveOperationException | LinkageError absent) {
            return Optional.empty();
        }
    }

    /** Sets variables to null and collects garbage; the share of the heap that is free then, in per cent. */
    int release(List<String> classNames, List<String> fieldNames) {
        for (int i = 0; i < classNames.size(); i++) {
            try {
                Field field = field(classNames.get(i), fieldNames.get(i));
                if (!field.getType().isPrimitive()) {
                    field.set(null, null);
                }
            } catch (ReflectiveOperationException | LinkageError absent) {
                // then it holds nothing
            }
        }
        System.gc();
        Runtime vm = Runtime.getRuntime();
        long used = vm.totalMemory() - vm.freeMemory();
        return (int) (100 * (vm.maxMemory() - used) / vm.maxMemory());
    }

    private Field field(String className, String fieldName) throws ReflectiveOperationException {
        Field field = loader.loadClass(className).getDeclaredField(fieldName);
        field.setAccessible(true);
        return field;
    }
}
