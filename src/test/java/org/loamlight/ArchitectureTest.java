package org.loamlight;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One way through the packages. The table is the one of DEVELOPERS.md; each exception stands with its reason. */
class ArchitectureTest {
    private static final String ROOT = "org.loamlight.";
    private static final JavaClasses CLASSES = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.loamlight");

    private static final String JACKSON = "com.fasterxml.jackson.core";
    private static final String DROOLS = "org.drools|org.kie";

    /** @param own packages of ours it may use; @param foreign beginnings of other packages it may use, beside java */
    private record Layer(String name, Set<String> own, String foreign) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final List<Layer> LAYERS = List.of(
            new Layer("quantity", Set.of(), ""),
            new Layer("physics", Set.of(), "org.apache.commons.numbers|org.shredzone.commons.suncalc"),
            new Layer("setup", Set.of("quantity"), JACKSON),
            new Layer("criterion", Set.of("quantity", "setup"), JACKSON),
            new Layer("derivation", Set.of("setup", "physics", "quantity"), ""),
            // physics: a Held carries its conformance probability, which is arithmetic and lives there.
            new Layer("finding", Set.of("criterion", "quantity", "setup", "physics"), ""),
            new Layer("rules", Set.of("finding", "criterion", "quantity", "setup"), DROOLS),
            new Layer("evaluation", Set.of("quantity", "physics", "setup", "criterion", "derivation", "finding"), DROOLS),
            // setup: the subject of a finding is part of its key.
            new Layer("ranking", Set.of("finding", "criterion", "quantity", "setup"), ""),
            // wording: sentences for workbook and report alike; they may not import each other.
            new Layer("wording", Set.of("quantity", "setup", "criterion", "finding", "evaluation", "ranking"), ""),
            // derivation, physics: where things stand and how the light falls is worked out there; a drawing only puts it on paper.
            new Layer("drawing", Set.of("quantity", "setup", "criterion", "finding", "evaluation", "ranking", "wording", "derivation", "physics"), ""),
            // jackson-core: results are written line by line as JSON and read again.
            new Layer("review", Set.of("quantity", "setup", "criterion", "finding", "evaluation", "ranking", "wording"), JACKSON),
            // openxmlformats: POI hands out its schema beans where it has no method of its own (table names, page set-up),
            // xmlbeans: and shapes, which it would build bean by bean in many times the time.
            // javax.xml.stream: workbooks others made are read as a stream and never unfolded whole.
            new Layer("workbook", Set.of("quantity", "setup", "criterion", "finding", "evaluation", "ranking", "wording", "drawing", "review"),
                    "org.apache.poi|org.openxmlformats.schemas|org.apache.xmlbeans|javax.xml.stream"),
            // jackson-core: the results are written as JSON.
            new Layer("report", Set.of("quantity", "setup", "criterion", "finding", "evaluation", "ranking", "wording", "drawing", "review"), JACKSON),
            new Layer("cli", Set.of("quantity", "setup", "criterion", "finding", "evaluation", "ranking", "wording", "drawing", "review", "workbook", "report"),
                    "picocli"));

    static List<Layer> layers() {
        return LAYERS;
    }

    @ParameterizedTest
    @MethodSource("layers")
    void each_package_uses_only_what_the_table_allows(Layer layer) {
        classes().that().resideInAPackage(ROOT + layer.name + "..").should(useOnly(layer)).check(CLASSES);
    }

    private static ArchCondition<JavaClass> useOnly(Layer layer) {
        return new ArchCondition<>("use only " + layer.own + ", java and '" + layer.foreign + "'") {
            @Override
            public void check(JavaClass user, ConditionEvents events) {
                user.getDirectDependenciesFromSelf().stream().filter(use -> !isAllowed(use.getTargetClass().getBaseComponentType(), layer))
                        .forEach(use -> events.add(SimpleConditionEvent.violated(user, use.getDescription())));
            }
        };
    }

    private static boolean isAllowed(JavaClass used, Layer layer) {
        String name = used.getPackageName();
        if (used.isPrimitive() || name.startsWith("java.") && !name.startsWith("java.awt")) {
            return true;
        }
        if (name.startsWith(ROOT)) {
            String own = name.substring(ROOT.length()).replaceFirst("\\..*", "");
            return own.equals(layer.name) || layer.own.contains(own);
        }
        return !layer.foreign.isEmpty() && Arrays.stream(layer.foreign.split("\\|")).anyMatch(name::startsWith);
    }

    @Test
    void the_table_names_every_package() {
        Set<String> packages = CLASSES.stream().map(JavaClass::getPackageName).filter(name -> name.startsWith(ROOT))
                .map(name -> name.substring(ROOT.length()).replaceFirst("\\..*", "")).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(LAYERS.stream().map(Layer::name).collect(Collectors.toCollection(TreeSet::new)), packages);
    }

    /** Only {@code workbook.cells} reads workbooks: within limits, as a stream, and no formula, macro or link is followed. */
    @Test
    void poi_writes_workbooks_and_reads_none() {
        noClasses().should().callConstructorWhere(DescribedPredicate.describe("a workbook that is there already is opened",
                call -> call.getTargetOwner().isAssignableTo(Workbook.class) && call.getTarget().getRawParameterTypes().stream()
                        .anyMatch(given -> !given.isAssignableTo(Workbook.class) && !given.isPrimitive()))).check(CLASSES);
        noClasses().should().dependOnClassesThat().haveNameMatching(".*\\.WorkbookFactory|org\\.apache\\.poi\\.(openxml4j|poifs|xssf\\.eventusermodel|hssf)\\..*").check(CLASSES);
    }

    @Test
    void only_the_command_line_touches_streams_exit_and_clock() {
        Map<String, Set<String>> calls = Map.of("java.lang.System", Set.of("exit", "currentTimeMillis", "nanoTime"),
                "java.time.LocalDate", Set.of("now"), "java.time.Instant", Set.of("now"), "java.time.Clock", Set.of("systemUTC", "systemDefaultZone"),
                "java.lang.Runtime", Set.of("exit", "halt"));
        calls.forEach((type, methods) -> methods.forEach(method -> noClasses().that().resideOutsideOfPackage(ROOT + "cli..")
                .should().callMethodWhere(named(type, method)).because("same input, same output").allowEmptyShould(true).check(CLASSES)));
        noClasses().that().resideOutsideOfPackages(ROOT + "cli..", ROOT + "rules..").should().accessField(System.class, "out")
                .orShould().accessField(System.class, "err").because("only cli prints").check(CLASSES);
    }

    private static DescribedPredicate<JavaMethodCall> named(String type, String method) {
        return DescribedPredicate.describe(type + "." + method,
                call -> call.getTargetOwner().getName().equals(type) && call.getTarget().getName().equals(method));
    }

    @Test
    void components_of_facts_have_two_letters_or_more_and_are_no_words_of_the_rule_language() {
        Set<String> reserved = Set.of("when", "then", "rule", "from", "not", "end", "package", "exists", "forall", "collect", "eval", "in", "or", "and",
                "matches", "contains", "over", "query", "declare", "import", "global", "function", "update", "modify", "insert", "retract");
        List<String> wrong = new ArrayList<>();
        CLASSES.stream().filter(type -> type.isAssignableTo(Record.class)).filter(type -> isFact(type.getPackageName()))
                .forEach(type -> type.getFields().stream().filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
                        .map(JavaField::getName).filter(name -> name.length() < 2 || reserved.contains(name))
                        .forEach(name -> wrong.add(type.getSimpleName() + "." + name)));
        assertEquals(List.of(), wrong);
    }

    private static boolean isFact(String packageName) {
        return Set.of("quantity", "setup", "criterion", "finding").contains(packageName.replace(ROOT, ""));
    }

    @Test
    void nothing_hides_behind_a_name_that_says_nothing() {
        noClasses().should().resideInAnyPackage("..util..", "..common..", "..helper..", "..manager..", "..impl..").check(CLASSES);
        noClasses().should().haveSimpleNameEndingWith("Util").orShould().haveSimpleNameEndingWith("Utils")
                .orShould().haveSimpleNameEndingWith("Helper").orShould().haveSimpleNameEndingWith("Manager")
                .orShould().haveSimpleNameEndingWith("Impl").check(CLASSES);
    }
}
