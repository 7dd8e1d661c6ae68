package kingpost.truss;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import kingpost.truss.LoadCases.Combination;
import kingpost.truss.LoadCases.LoadCase;
import kingpost.truss.TrussDraft.CaseEntry;
import kingpost.truss.TrussDraft.LoadEntry;
import kingpost.truss.TrussDraft.SpreadEntry;

/** Parts the loads as written into load cases, and reads the combinations of these. */
final class LoadCaseCheck {

    private final TrussDraft draft;
    private final Problems problems;
    private final BiFunction<List<LoadEntry>, List<SpreadEntry>, List<Load>> reader;
    private final List<Load> all = new ArrayList<>();

    /** @param reader makes loads of single and of spread ones */
    LoadCaseCheck(TrussDraft draft, Problems problems,
                  BiFunction<List<LoadEntry>, List<SpreadEntry>, List<Load>> reader) {
        this.draft = draft;
        this.problems = problems;
        this.reader = reader;
    }

    /** Every load, case after case. */
    List<Load> all() {
        return all;
    }

    LoadCases cases() {
        List<CaseEntry> entries = draft.cases;
        int loads = entries.isEmpty() ? draft.loads.size() : entries.get(0).loadsBefore();
        int spreads = entries.isEmpty() ? draft.spreads.size() : entries.get(0).spreadsBefore();
        all.addAll(reader.apply(draft.loads.subList(0, loads), draft.spreads.subList(0, spreads)));
        if (!entries.isEmpty() && loads + spreads > 0) {
            problems.add("Loads", loads + spreads + " of them stand" + (loads + spreads == 1 ? "s" : "")
                    + " before the first load case", "write loadCase(\"dead\") or the like before them");
        }
        List<LoadCase> cases = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            boolean last = i + 1 == entries.size();
            cases.add(loadCase(entries.get(i), last ? draft.loads.size() : entries.get(i + 1).loadsBefore(),
                    last ? draft.spreads.size() : entries.get(i + 1).spreadsBefore()));
        }
        checkNames(cases);
        return new LoadCases(cases, combinations(cases.stream().map(LoadCase::name).toList()));
    }

    private LoadCase loadCase(CaseEntry entry, int loadsBelow, int spreadsBelow) {
        List<Load> loads = reader.apply(draft.loads.subList(entry.loadsBefore(), loadsBelow),
                draft.spreads.subList(entry.spreadsBefore(), spreadsBelow));
        if (entry.loadsBefore() == loadsBelow && entry.spreadsBefore() == spreadsBelow) {
            problems.add("Load case " + entry.name(), "no load is in it", "write its loads after it, or leave it out");
        }
        all.addAll(loads);
        return new LoadCase(entry.name(), loads);
    }

    private void checkNames(List<LoadCase> cases) {
        Set<String> seen = new HashSet<>();
        for (LoadCase loadCase : cases) {
            if (loadCase.name().isBlank()) {
                problems.add("Load case", "it has no name", "write loadCase(\"dead\") or the like");
            } else if (loadCase.name().matches("(?s).*[-+\u2212*\u00d7\u00b7].*|[0-9.].*")) {
                problems.add("Load case " + loadCase.name(), "a combination could not be read with such a name",
                        "begin it with a letter and leave out + - and *");
            } else if (!seen.add(loadCase.name())) {
                problems.add("Load case " + loadCase.name(), "it is begun twice", "write all its loads in one place");
            }
        }
    }

    private List<Combination> combinations(List<String> cases) {
        List<Combination> combinations = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TrussDraft.CombinationEntry entry : draft.combinations) {
            new CombinationReader(cases, problems).read(entry.name(), entry.formula()).ifPresent(combination -> {
                if (seen.add(combination.name())) {
                    combinations.add(combination);
                } else {
                    problems.add("Combination " + combination.name(), "it is given twice", "leave one out or rename it");
                }
            });
        }
        return combinations;
    }
}
