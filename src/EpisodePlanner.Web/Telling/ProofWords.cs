using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Web.Telling;

/// <summary>Says what no plan can do, and why.</summary>
internal sealed class ProofWords(Plan plan)
{
    private const int MostSteps = 6;
    private readonly PlanNames names = new(plan);

    /// <summary>"No plan can publish “Brakes” before Saturday 3 April: 77 h of work …"</summary>
    public string Bound(EpisodeProof proof) => proof.Date is { } date
        ? $"No plan can publish {PlanNames.Title(proof.Episode)} before {names.Day(date)}: {Why(proof.Why)}."
        : $"No plan publishes {PlanNames.Title(proof.Episode)} by {names.Day(names.DateOf(plan.Horizon))}, as far as this one looks: {Why(proof.Why)}.";

    /// <summary>Whether the plan does as well.</summary>
    public string Reached(EpisodeProof proof) => (proof.IsReached, proof.OpenDays) switch
    {
        (true, _) => "The plan publishes it on that day; with these episodes and this work no plan is better.",
        (_, { } days) => $"The plan publishes it on {names.Day(proof.Episode.Date!.Value)}. Of the {Words.Days(days)} between, some go to other work "
            + "that the plan puts first, and for the rest nobody has shown whether they can be won.",
        _ => "The plan has no date for it.",
    };

    /// <summary>What makes earlier dates impossible, to follow a colon.</summary>
    public string Why(ProofReason why) => why switch
    {
        ProofReason.Chain chain => $"{Steps(chain.Stages)} {(chain.Stages.Count > 1 ? "follow each other and take" : "takes")} until then, "
            + "even if nobody and nothing else had to be waited for",
        ProofReason.Load load => Load(load),
        ProofReason.Together together => $"what waits for what, and the hours of {names.Stations(together.Stations)} together leave no earlier one",
        _ => "no earlier slot is open to it",
    };

    private string Load(ProofReason.Load load)
    {
        var people = load.Stations.All(names.IsPerson);
        var work = people ? $"of work of {(load.Stations.Count > 1 ? "all hands" : "these hands")}" : $"with {names.Stations(load.Stations)}";
        var from = load.From > plan.Request.PlannedAt ? $"from {names.Moment(load.From)} " : "";
        return $"{Hours(load.NeededMinutes)} {work} come first, and {Hours(load.OpenMinutes)} are open {from}until {names.Moment(load.Until)}";
    }

    private static string Steps(ValueList<PlannedStage> stages)
    {
        var said = stages.Where(stage => stage.Minutes > 0).Select(stage => $"{PlanNames.Quote(stage.Name)} ({Length(stage)})").ToList();
        return said.Count <= MostSteps
            ? string.Join(", ", said)
            : $"{string.Join(", ", said.Take(MostSteps - 1))}, {said.Count - MostSteps} more and {said[^1]}";
    }

    private static string Length(PlannedStage stage) => stage.Kind switch
    {
        StageKind.Attended => Hours(stage.Minutes),
        StageKind.Run => $"{Hours(stage.Minutes)} of machine time",
        _ => $"{Words.Minutes(stage.Minutes)} of waiting",
    };

    /// <summary>Work is counted in hours, however long: "77 h", "7 h 30 min".</summary>
    private static string Hours(int minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var left) => $"{left} min",
        (var whole, 0) => $"{whole} h",
        var (whole, left) => $"{whole} h {left} min",
    };
}
