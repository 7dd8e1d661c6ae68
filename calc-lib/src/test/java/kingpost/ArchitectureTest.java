package kingpost;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
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
 * The map of the library: a package imports only packages listed above it, and each third-party library is known to
 * one package. When a check fails, move the code; when the plan itself has become better, change it here.
 */
class ArchitectureTest {

    /** Package to the packages that it may import, in the order of the plan. */
    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            Map.entry("units", Set.of()),
            Map.entry("exact", Set.of()),
            Map.entry("svg", Set.of()),
            Map.entry("truss", Set.of("units")),
            Map.entry("form", Set.of("truss", "units")),
            Map.entry("statics", Set.of("truss", "units", "exact")),
            Map.entry("graphic", Set.of("statics", "truss", "units")),
            Map.entry("moving", Set.of("statics", "truss", "units", "exact")),
            Map.entry("derivation", Set.of("units", "svg")),
            Map.entry("calculation", Set.of("units", "derivation")),
            Map.entry("diagram", Set.of("statics", "graphic", "moving", "truss", "units", "svg")),
            Map.entry("explain", Set.of("statics", "graphic", "moving", "truss", "units", "exact", "svg", "diagram",
                    "derivation")),
            Map.entry("csv", Set.of("units")),
            Map.entry("variant", Set.of("csv", "truss", "statics", "units", "exact", "svg", "derivation", "diagram", "explain")),
            Map.entry("marking", Set.of("csv", "truss", "statics", "units", "exact", "derivation", "diagram", "explain")),
            Map.entry("render", Set.of("derivation", "units", "svg")),
            Map.entry("notebook", Set.of("units", "exact", "svg", "truss", "form", "statics", "graphic", "moving",
                    "derivation", "calculation", "diagram", "explain", "render", "csv", "variant", "marking")));

    private static final int FEWEST_CLASSES = 60;

    private static final JavaClasses LIBRARY = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("kingpost");

    private static final Set<String> JDK_PACKAGES = ModuleLayer.boot().modules().stream()
            .filter(module -> module.getName().startsWith("java.") || module.getName().startsWith("jdk."))
            .flatMap(module -> module.getPackages().stream())
            .collect(Collectors.toUnmodifiableSet());

    private static Stream<Dependency> dependencies(Predicate<JavaClass> onto) {
        return LIBRARY.stream()
                .flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                .filter(d -> onto.test(d.getTargetClass().getBaseComponentType()));
    }

    private static boolean isOurs(JavaClass type) {
        return type.getPackageName().equals("kingpost") || type.getPackageName().startsWith("kingpost.");
    }

    /** "units" for a class in kingpost.units or below it. */
    private static String packageOf(JavaClass ours) {
        String[] parts = ours.getPackageName().split("\\.");
        return parts.length > 1 ? parts[1] : "";
    }

    @Test
    void enoughClassesAreExamined() {
        assertTrue(LIBRARY.size() >= FEWEST_CLASSES, "only " + LIBRARY.size() + " classes were found");
    }

    @Test
    void everyPackageIsOnTheMap() {
        Set<String> unknown = LIBRARY.stream().map(ArchitectureTest::packageOf).collect(Collectors.toSet());
        unknown.removeAll(MAY_IMPORT.keySet());
        assertEquals(Set.of(), unknown);
    }

    @Test
    void packagesImportOnlyWhatStandsAboveThem() {
        Set<String> wrong = dependencies(ArchitectureTest::isOurs)
                .filter(d -> !isAllowed(packageOf(d.getOriginClass()),
                        packageOf(d.getTargetClass().getBaseComponentType())))
                .map(Dependency::getDescription)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), wrong);
    }

    private static boolean isAllowed(String from, String to) {
        return from.equals(to) || MAY_IMPORT.getOrDefault(from, Set.of()).contains(to);
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("kingpost.(*)..").should().beFreeOfCycles().check(LIBRARY);
    }

    /** The standard's interfaces for units, {@code javax.measure}, may be named anywhere. */
    @Test
    void eachThirdPartyLibraryIsKnownToOnePackage() {
        Map<String, Set<String>> users = new TreeMap<>();
        dependencies(ArchitectureTest::isThirdParty).forEach(d -> users
                .computeIfAbsent(library(d.getTargetClass().getBaseComponentType()), name -> new TreeSet<>())
                .add(packageOf(d.getOriginClass())));
        users.values().removeIf(packages -> packages.size() == 1);
        assertEquals(Map.of(), users);
    }

    private static boolean isThirdParty(JavaClass type) {
        String name = type.getPackageName();
        return !isOurs(type) && !type.isPrimitive() && !JDK_PACKAGES.contains(name)
                && !name.startsWith("javax.measure");
    }

    private static String library(JavaClass type) {
        return Stream.of(type.getPackageName().split("\\.")).limit(3).collect(Collectors.joining("."));
    }

    @Test
    void theCheckOnLibrariesSeesThem() {
        Set<String> seen = dependencies(ArchitectureTest::isThirdParty)
                .map(d -> library(d.getTargetClass().getBaseComponentType())).collect(Collectors.toSet());
        assertTrue(seen.containsAll(List.of("tech.units.indriya", "com.github.weisj")), seen::toString);
    }

    @Test
    void nothingPrints() {
        GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(LIBRARY);
    }

    @Test
    void everyPackageSaysWhatBelongsInIt() {
        Path sources = Path.of("src/main/java/kingpost");
        for (String name : LIBRARY.stream().map(ArchitectureTest::packageOf).collect(Collectors.toSet())) {
            assertTrue(Files.exists(sources.resolve(name).resolve("package-info.java")), name);
        }
    }
}
