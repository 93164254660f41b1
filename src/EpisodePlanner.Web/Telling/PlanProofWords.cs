using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Telling;

/// <summary>Says how much better than a plan any other could be.</summary>
internal sealed class PlanProofWords(Plan plan)
{
    /// <summary>Where nothing can be compared.</summary>
    public const string Incomparable =
        "The plan leaves work or an episode without a date, so there is nothing to compare: what is wrong with it comes first.";

    /// <summary>What the comparison is about.</summary>
    public const string Compared =
        "Compared with every plan that does the same work, publishes the same episodes and ends at most a week later.";

    private readonly PlanNames names = new(plan);

    /// <summary>The whole in a sentence.</summary>
    public static string Verdict(PlanProof proof) => proof.Parts[^1] switch
    {
        _ when proof.IsBest => "This plan is the best there is: no plan is better.",
        { Part: WeightPart.Late } part => $"This plan could be better: less late, by at most {Span(part.MostToWin)}.",
        { Part: WeightPart.Silence } part => $"This plan could be better: its silences could weigh less, by at most {part.MostToWin}.",
        { Part: WeightPart.Moves } part => $"This plan could be better: it could keep more of the accepted starts, at most {part.MostToWin} more.",
        var part => $"This plan could be better: the work could end sooner, by at most {Span(part.MostToWin)}.",
    };

    /// <summary>What may follow the verdict: that a better plan is only not ruled out, and what was left out.</summary>
    public IEnumerable<string> Remarks(PlanProof proof)
    {
        if (!proof.IsBest)
        {
            yield return "Nobody has shown whether there is a better one.";
        }

        if (plan.Request.Workshop.Series.Any(series => series.Promise?.UploadsPerMonth is not null))
        {
            yield return "Promises of uploads a month are not part of this proof.";
        }
    }

    /// <summary>One part, the weightiest first.</summary>
    public string Part(PartProof part) => part.Part switch
    {
        WeightPart.Late => Late(part),
        WeightPart.Silence => Silence(part),
        WeightPart.Moves => Moves(part),
        _ => End(part),
    };

    private static string Late(PartProof part) => part switch
    {
        { Reached: 0 } => "Nothing that has a date is late.",
        { Bound: 0 } => $"Told dates, dates that work is needed by and pinned slots are missed by {Span(part.Reached)} together; "
            + "nobody has shown that they must be.",
        _ => $"Told dates, dates that work is needed by and pinned slots are missed by {Span(part.Reached)} together; "
            + $"no plan is late by less than {(part.IsReached ? "that" : Span(part.Bound))}.",
    };

    private static string Silence(PartProof part) => part switch
    {
        { Reached: 0 } => "No silence goes beyond its promise.",
        { Bound: 0 } => $"Silences beyond their promises weigh {part.Reached} (days beyond, squared, from thirty on a line, and added); "
            + "nobody has shown that they must weigh anything.",
        _ => $"Silences beyond their promises weigh {part.Reached} (days beyond, squared, from thirty on a line, and added); "
            + $"no plan{AsGood(part)} weighs less than {(part.IsReached ? "that" : $"{part.Bound}")}.",
    };

    private static string Moves(PartProof part) => part switch
    {
        { Reached: 0 } => "No accepted start of the next seven days has moved.",
        _ => $"Accepted starts of the next seven days that have moved: {part.Reached}; no plan{AsGood(part)} moves fewer than "
            + $"{(part.IsReached ? "these" : $"{part.Bound}")}.",
    };

    private string End(PartProof part) => part.IsReached
        ? $"The work ends {Moment(part.Reached)}; no plan{AsGood(part)} ends sooner."
        : $"The work ends {Moment(part.Reached)}; no plan{AsGood(part)} ends before {Moment(part.Bound)}.";

    /// <summary>A part speaks only about plans that are as good in what comes before it.</summary>
    private static string AsGood(PartProof part) => part.Part == WeightPart.Late ? "" : " as good in the above";

    private string Moment(long minute) => names.Moment(plan.Request.PlannedAt + Duration.FromMinutes(minute));

    private static string Span(long minutes) => Words.Minutes((int)Math.Min(int.MaxValue, minutes));
}
