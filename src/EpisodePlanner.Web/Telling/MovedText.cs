using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What moved in the next seven days against the plan that was accepted.</summary>
internal static class MovedText
{
    private const int MostMoves = 6;

    /// <summary>Writes nothing where nothing moved.</summary>
    public static void Write(ISheet page, Plan plan, ValueList<MovedStart> moved, PlanNames names)
    {
        if (moved.Count == 0)
        {
            return;
        }

        page.Heading($"What moved since you accepted the plan on {names.ShortDay(names.DateOf(plan.Request.Workshop.Accepted!.At))}");
        foreach (var move in moved.Take(MostMoves))
        {
            page.Item(Say(move, names));
            if (move.Because is { } because)
            {
                page.Below($"because {because}");
            }
        }

        if (moved.Count > MostMoves)
        {
            page.Item($"{moved.Count - MostMoves} more");
        }
    }

    private static string Say(MovedStart move, PlanNames names)
    {
        var name = PlanNames.Quote(move.Stage.Name);
        return move.Stage.Start is { } start
            ? $"{name}: {names.Moment(start)} instead of {names.Moment(move.Accepted)}"
            : $"{name}: no date any more, instead of {names.Moment(move.Accepted)}";
    }
}
