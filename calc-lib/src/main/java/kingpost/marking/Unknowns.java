package kingpost.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.statics.Source;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;

/**
 * The forces to be found in a truss, numbered: members first, in the truss's order, then reaction components.
 *
 * @param truss   the truss
 * @param sources in the order numbered
 */
record Unknowns(TrussModel truss, List<Source> sources) {

    Unknowns {
        sources = List.copyOf(sources);
    }

    static Unknowns of(TrussModel truss, List<Source.OfReaction> reactions) {
        List<Source> sources = new ArrayList<>();
        truss.members().forEach(member -> sources.add(new Source.OfMember(member)));
        sources.addAll(reactions);
        return new Unknowns(truss, sources);
    }

    int count() {
        return sources.size();
    }

    boolean isMember(int unknown) {
        return unknown < truss.members().size();
    }

    Member member(int unknown) {
        return truss.members().get(unknown);
    }

    Source.OfReaction reaction(int unknown) {
        return (Source.OfReaction) sources.get(unknown);
    }

    int numberOf(Member member) {
        return truss.members().indexOf(member);
    }

    int numberOf(Source source) {
        return sources.indexOf(source);
    }

    /** "AB" for a member; "Ax" for a reaction, "A" where its joint has one that is neither x nor y. */
    String name(int unknown) {
        return isMember(unknown) ? member(unknown).name() : reaction(unknown).joint() + letter(unknown);
    }

    /**
     * The unknown that a person means: a member by its name with the ends either way round, perhaps with F before it;
     * a reaction as "Ax", "A_x", "RAx" or "R_Ax", letters large or small after the joint's name. In small letters where
     * only one force can be meant.
     */
    OptionalInt find(String written) {
        String name = AnswerReader.plain(written).replaceAll("\\s+", "");
        String bare = name.replaceAll("^[FNSTfnst](_\\{?|\\(|)|[)}]$", "");
        return Stream.of(memberNamed(name), memberNamed(bare), reactionNamed(name), inAnyCase(name), inAnyCase(bare))
                .filter(OptionalInt::isPresent).findFirst().orElse(OptionalInt.empty());
    }

    private OptionalInt inAnyCase(String name) {
        int[] found = IntStream.range(0, count()).filter(i -> names(i).anyMatch(each -> each.equalsIgnoreCase(name)))
                .toArray();
        return found.length == 1 ? OptionalInt.of(found[0]) : OptionalInt.empty();
    }

    private Stream<String> names(int unknown) {
        if (!isMember(unknown)) {
            return subscripts(unknown).stream().flatMap(subscript -> Stream.of(reaction(unknown).joint() + subscript,
                    reaction(unknown).joint() + "_" + subscript, "R" + reaction(unknown).joint() + subscript));
        }
        Member member = member(unknown);
        return Stream.of(member.from() + member.to(), member.to() + member.from(), member.from() + "-" + member.to(),
                member.to() + "-" + member.from());
    }

    private OptionalInt memberNamed(String name) {
        return truss.member(name).map(member -> OptionalInt.of(numberOf(member))).orElse(OptionalInt.empty());
    }

    private OptionalInt reactionNamed(String name) {
        String bare = name.replaceAll("[_{}(),]", "");
        for (int i = truss.members().size(); i < count(); i++) {
            String joint = reaction(i).joint();
            for (String subscript : subscripts(i)) {
                if (bare.equals(joint + subscript) || bare.equals("R" + joint + subscript)
                        || bare.equals(joint + subscript.toUpperCase(Locale.ROOT))) {
                    return OptionalInt.of(i);
                }
            }
        }
        return OptionalInt.empty();
    }

    /** A component that is the only one of its joint also goes by the joint's name alone. */
    private List<String> subscripts(int reaction) {
        List<Support> supports = truss.supportsAt(reaction(reaction).joint());
        boolean alone = supports.stream().mapToInt(s -> s.reactions().size()).sum() == 1;
        return alone ? List.of(letter(reaction), "") : List.of(letter(reaction));
    }

    private String letter(int unknown) {
        return reaction(unknown).letter();
    }
}
