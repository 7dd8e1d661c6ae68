package kingpost.kernel;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The map of the kernel: a package imports only packages listed above it, only the agent knows the calculation
 * library, each third-party library is known to one package, and only the commands print. When a check fails, move
 * the code; when the plan itself has become better, change it here.
 */
class ArchitectureTest {

    /** Packages in the order of the plan; each with those it may import. */
    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            Map.entry("message", Set.of()),
            Map.entry("wire", Set.of("message")),
            Map.entry("transport", Set.of()),
            Map.entry("channels", Set.of("transport", "wire", "message")),
            Map.entry("pipe", Set.of()),
            Map.entry("display", Set.of()),
            Map.entry("formula", Set.of()),
            Map.entry("evaluation", Set.of("display", "pipe")),
            Map.entry("library", Set.of()),
            Map.entry("agent", Set.of("display", "pipe", "library")),
            Map.entry("session", Set.of("message", "evaluation", "display")),
            Map.entry("document", Set.of("wire", "message", "display", "evaluation", "session")),
            Map.entry("recheck", Set.of("document", "evaluation")),
            Map.entry("page", Set.of("formula", "document")),
            Map.entry("print", Set.of()),
            Map.entry("cli", Set.of("message", "wire", "channels", "display", "evaluation", "session", "document",
                    "recheck", "page", "print")));

    private static final int FEWEST_CLASSES = 150;

    private static final JavaClasses KERNEL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("kingpost.kernel");

    private static final Set<String> JDK_PACKAGES = ModuleLayer.boot().modules().stream()
            .filter(module -> module.getName().startsWith("java.") || module.getName().startsWith("jdk."))
            .flatMap(module -> module.getPackages().stream())
            .collect(Collectors.toUnmodifiableSet());

    private static Stream<Dependency> dependencies(Predicate<JavaClass> onto) {
        return KERNEL.stream()
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .filter(dependency -> onto.test(target(dependency)));
    }

    private static JavaClass target(Dependency dependency) {
        return dependency.getTargetClass().getBaseComponentType();
    }

    private static boolean isOfTheKernel(JavaClass type) {
        return type.getPackageName().startsWith("kingpost.kernel");
    }

    private static boolean isOfTheLibrary(JavaClass type) {
        return type.getPackageName().startsWith("kingpost.") && !isOfTheKernel(type);
    }

    private static boolean isThirdParty(JavaClass type) {
        String name = type.getPackageName();
        return !name.startsWith("kingpost") && !type.isPrimitive() && !JDK_PACKAGES.contains(name);
    }

    /** "wire" for a class in kingpost.kernel.wire or below it. */
    private static String packageOf(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length > 2 ? parts[2] : "";
    }

    /** A library by the first parts of its package's name: three under org.apache, where many live, else two. */
    private static String library(JavaClass type) {
        int parts = type.getPackageName().startsWith("org.apache.") ? 3 : 2;
        return Stream.of(type.getPackageName().split("\\.")).limit(parts).collect(Collectors.joining("."));
    }

    @Test
    void enoughClassesAreExamined() {
        assertTrue(KERNEL.size() >= FEWEST_CLASSES, "only " + KERNEL.size() + " classes were found");
    }

    @Test
    void everyPackageIsOnTheMap() {
        Set<String> found = KERNEL.stream().map(ArchitectureTest::packageOf).collect(Collectors.toSet());
        assertEquals(new TreeSet<>(MAY_IMPORT.keySet()), new TreeSet<>(found));
    }

    @Test
    void packagesImportOnlyWhatStandsAboveThem() {
        Set<String> wrong = dependencies(ArchitectureTest::isOfTheKernel)
                .filter(dependency -> !isAllowed(packageOf(dependency.getOriginClass()), packageOf(target(dependency))))
                .map(Dependency::getDescription)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), wrong);
    }

    private static boolean isAllowed(String from, String to) {
        return from.equals(to) || MAY_IMPORT.getOrDefault(from, Set.of()).contains(to);
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("kingpost.kernel.(*)..").should().beFreeOfCycles().check(KERNEL);
    }

    @Test
    void onlyTheAgentKnowsTheCalculationLibrary() {
        Set<String> users = dependencies(ArchitectureTest::isOfTheLibrary)
                .map(dependency -> packageOf(dependency.getOriginClass())).collect(Collectors.toSet());
        assertEquals(Set.of("agent"), users);
    }

    @Test
    void eachThirdPartyLibraryIsKnownToOnePackage() {
        Map<String, Set<String>> users = new TreeMap<>();
        dependencies(ArchitectureTest::isThirdParty).forEach(dependency -> users
                .computeIfAbsent(library(target(dependency)), name -> new TreeSet<>())
                .add(packageOf(dependency.getOriginClass())));
        users.values().removeIf(packages -> packages.size() == 1);
        assertEquals(Map.of(), users);
    }

    @Test
    void theCheckOnLibrariesSeesThem() {
        Set<String> seen = dependencies(ArchitectureTest::isThirdParty)
                .map(dependency -> library(target(dependency))).collect(Collectors.toSet());
        assertTrue(seen.containsAll(List.of("org.zeromq", "com.google", "org.commonmark", "org.jsoup")), seen::toString);
    }

    @Test
    void onlyTheCommandsPrint() {
        ArchRuleDefinition.noClasses().that().resideOutsideOfPackages("kingpost.kernel.cli..", "kingpost.kernel.agent..")
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS).check(KERNEL);
    }

    @Test
    void everyPackageSaysWhatBelongsInIt() {
        List<String> silent = MAY_IMPORT.keySet().stream()
                .filter(name -> !Files.exists(Path.of("src/main/java/kingpost/kernel", name, "package-info.java")))
                .sorted().toList();
        assertEquals(List.of(), silent);
    }
}
