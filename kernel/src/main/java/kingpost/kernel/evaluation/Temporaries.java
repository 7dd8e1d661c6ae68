package kingpost.kernel.evaluation;

import java.util.function.Supplier;
import kingpost.kernel.pipe.Kind;

/** Names for the variables that JShell makes of expressions; nobody would write them. For one thread. */
final class Temporaries implements Supplier<String> {

    private long last;

    @Override
    public String get() {
        return Kind.TEMPORARY + ++last;
    }
}
