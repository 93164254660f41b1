using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Web.Telling;

/// <summary>What must start tonight, with its caution.</summary>
internal static class TonightText
{
    private const int MostMoves = 3;
    private const string None = "No machine run is planned to start before tomorrow noon.";

    public static void Write(ISheet page, Plan plan, ValueList<RunTonight> runs, PlanNames names, bool withCautions = true)
    {
        page.Heading("What must start tonight");
        if (!runs.Any(run => run.Must))
        {
            page.Paragraph(runs.Count == 0 ? None : "Nothing: the runs that are planned could each start a day later without moving an upload.");
        }

        foreach (var run in runs.Where(run => run.Must))
        {
            page.Item($"{Start(run, names)}. {Cost(run, names)}");
            page.Item($"{PlanNames.Quote(run.Stage.Name)} {Runs(run, names)}.{AlsoLater(run, names)}");
        }

        foreach (var run in runs.Where(run => !run.Must))
        {
            page.Item($"{(runs.Any(r => r.Must) ? "Planned, but can wait a day" : "Planned")}: {Start(run, names)}; it {Runs(run, names)}.");
        }

        foreach (var caution in withCautions ? Cautions(plan, runs) : [])
        {
            page.Item(CautionWords.Of(caution));
        }
    }

    /// <summary>What is planned to start tonight, while it is not known yet what can wait.</summary>
    public static void WritePlanned(ISheet page, ValueList<RunTonight> runs, PlanNames names)
    {
        page.Heading("What must start tonight");
        page.Paragraph(runs.Count == 0 ? None : $"{(runs.Count == 1 ? "1 run is" : $"{runs.Count} runs are")} planned; which can wait a day is being tried out.");
        foreach (var run in runs)
        {
            page.Item($"Planned: {Start(run, names)}; it {Runs(run, names)}.");
        }
    }

    /// <summary>What to mind where runs go on with nobody there.</summary>
    public static IEnumerable<Caution> Cautions(Plan plan, ValueList<RunTonight> runs) => runs
        .Where(run => run.Stage.RunsAlone)
        .SelectMany(run => Planning.Cautions.For(run.Stage, plan.Request.Workshop).Take(1))
        .Distinct();

    private static string Start(RunTonight run, PlanNames names)
    {
        var machine = names.Stations(run.Stage.Parts.First(part => part.Kind == PartKind.Run).Stations);
        return $"{PlanNames.Quote(run.Stage.Name)} on {machine}, {names.Moment(run.Stage.Start!.Value)}";
    }

    private static string Runs(RunTonight run, PlanNames names)
    {
        var end = run.Stage.Parts.First(part => part.Kind == PartKind.Run).End;
        return $"{(run.Stage.RunsAlone ? "runs on with nobody there until" : "runs until")} {names.Moment(end)}";
    }

    /// <summary>The first upload that moves: on a phone there is room for one.</summary>
    private static string Cost(RunTonight run, PlanNames names) =>
        $"Started {names.ShortDay(run.PutOffTo)} or later, {Say(run.Moves[0], names)}.";

    private static string AlsoLater(RunTonight run, PlanNames names)
    {
        if (run.Moves.Count == 1)
        {
            return "";
        }

        var more = run.Moves.Count - 1 - MostMoves;
        var moves = string.Join("; ", run.Moves.Skip(1).Take(MostMoves).Select(move => Say(move, names)));
        return $" Not started tonight, it makes later besides: {moves}{(more > 0 ? $"; and {(more == 1 ? "1 more upload is" : $"{more} more uploads are")} later" : "")}.";
    }

    private static string Say(MovedUpload move, PlanNames names)
    {
        var (from, title) = (move.Episode.Date!.Value, PlanNames.Title(move.Episode));
        if (move.To is not { } moment)
        {
            return $"{title} has no date any more";
        }

        var to = names.DateOf(moment);
        var days = Period.DaysBetween(from, to);
        return $"{title} goes out {(days > 0 ? $"{Words.Days(days)} later, {names.ShortDay(to)} instead of {names.ShortDay(from)}" : $"later on {names.ShortDay(from)}")}";
    }
}
