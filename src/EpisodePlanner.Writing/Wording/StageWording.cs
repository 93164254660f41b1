using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Writing;

/// <summary>What is left to do, in sentences, from the plan.</summary>
internal static class StageWording
{
    /// <summary>A stage that is left, with its length and dates.</summary>
    public static Block Line(PlannedStage stage, Ledger ledger)
    {
        var fact = Fact.Of(stage);
        var line = Say.From($"{InWords.Quoted(stage.Name)}, {Length(stage)}: {DateWording.Span(stage, ledger)}.", fact);
        return Say.Item([line, .. Alone(stage, fact)]);
    }

    private static Markdown Length(PlannedStage stage) => stage.Kind switch
    {
        StageKind.Run => Markdown.Of($"{InWords.Work(stage.Minutes)} on a machine"),
        StageKind.Wait => Markdown.Of($"{InWords.Passing(stage.Minutes)} of waiting"),
        _ => Markdown.Of($"{InWords.Work(stage.Minutes)} by hand"),
    };

    private static IEnumerable<Sentence> Alone(PlannedStage stage, Fact fact) => stage.RunsAlone
        ? [Say.From($"For a time nobody is there: mind the caution below.", fact)]
        : [];
}
