using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Cautions in a box: each with the work it belongs to and its source, and what they all give way to.</summary>
internal static class CautionWording
{
    private const int Names = 3;

    public static IEnumerable<Block> Box(IReadOnlyCollection<(Caution Caution, string Work, Fact Fact)> cautions)
    {
        foreach (var group in cautions.GroupBy(pair => pair.Caution))
        {
            var works = group.Select(pair => pair.Work).Distinct().Select(InWords.Quoted).ToList();
            var facts = group.Select(pair => pair.Fact).Distinct().ToList();
            yield return Say.Boxed(One(group.Key, InWords.ShortList(works, Names), facts));
        }

        var first = cautions.Select(pair => pair.Caution.Defers).Distinct().ToList();
        if (first.Count > 0)
        {
            yield return Say.Boxed(first.Select(sentence => Say.From($"{sentence}")));
        }
    }

    private static Sentence One(Caution caution, Markdown works, IEnumerable<Fact> facts) =>
        Say.From($"**{caution.Topic}** at {works}. {caution.Text} Source: {caution.Source}.", facts);
}
