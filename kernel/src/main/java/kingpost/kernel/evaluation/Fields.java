package kingpost.kernel.evaluation;

import java.lang.reflect.Field;

/** Fields of JShell that it does not open; the VM must open the package for that (the jar's manifest does). */
final class Fields {

    private Fields() {
    }

    static Field of(Class<?> owner, String name) throws ReflectiveOperationException {
        Field field = owner.getDeclaredField(name);
        field.setAccessible(true);
        return field;
    }

    @SuppressWarnings("unchecked")
    static <T> T get(Object owner, String name) throws ReflectiveOperationException {
        return (T) of(owner.getClass(), name).get(owner);
    }
}
