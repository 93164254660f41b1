using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>The cautions for the work the episode shows and for what is still to be done for it.</summary>
internal static class OutlineCautions
{
    public static Section Section(Ledger ledger, PlannedEpisode episode)
    {
        var shown = ledger.Story.TasksOf(episode).ToList();
        var waitedFor = ledger.Story.WithWhatTheyWaitFor(shown);
        var atWork = shown.SelectMany(task => Of(task, ledger));
        var left = waitedFor.SelectMany(task => Left(task, shown.Contains(task), ledger));
        return Say.Section(2, $"Cautions", CautionWording.Box([.. atWork, .. left]));
    }

    private static IEnumerable<(Caution Caution, string Work, Fact Fact)> Of(WorkTask task, Ledger ledger) =>
        Cautions.For(task, ledger.Workshop).Select(caution => (caution, task.Name, Fact.Of(task)));

    // Of work that is shown only what its task does not say already.
    private static IEnumerable<(Caution Caution, string Work, Fact Fact)> Left(WorkTask task, bool shown, Ledger ledger)
    {
        var said = shown ? Cautions.For(task, ledger.Workshop) : [];
        return ledger.Left(task).SelectMany(stage => Cautions.For(stage, ledger.Workshop)
            .Where(caution => !said.Contains(caution))
            .Select(caution => (caution, stage.Name, Fact.Of(stage))));
    }
}
