namespace EpisodePlanner.Planning;

/// <summary>Series: one promise, a day to come back from a rest, milestones with ids of their own.</summary>
internal static class SeriesRules
{
    public static void Check(Inspection inspection)
    {
        foreach (var series in inspection.Workshop.Series)
        {
            var at = ThingKinds.Series.At(series.Id);
            inspection.RefuseIf(
                series is { State: SeriesState.Resting, RestingUntil: null },
                at.Member("restingUntil"),
                "A resting series says when it comes back; give restingUntil.");
            CheckPromise(inspection, series.Promise, at.Member("promise"));
            inspection.RefuseIf(
                series.ScreenMinutes is { } bounds && bounds.Least > bounds.Most,
                at.Member("screenMinutes"),
                "The shortest episode is longer than the longest; make 'least' at most 'most'.");
            CheckMilestones(inspection, series, at.Member("milestones"));
        }
    }

    private static void CheckPromise(Inspection inspection, Promise? promise, Spot at) =>
        inspection.RefuseIf(
            promise is not null && promise.LongestSilenceDays is null == promise.UploadsPerMonth is null,
            at,
            "A promise is one of two: give either longestSilenceDays or uploadsPerMonth.");

    private static void CheckMilestones(Inspection inspection, Series series, Spot at)
    {
        for (var i = 0; i < series.Milestones.Count; i++)
        {
            var milestone = series.Milestones[i];
            var spot = at.Item(i);
            var first = inspection.Register.StoryPlace(milestone.Id);
            inspection.RefuseIf(
                first != new StoryPlace(series.Id, i),
                spot.Member("id"),
                $"The id '{milestone.Id}' is taken by a milestone of series '{first?.Series}'; give this one another.");
            EstimateRules.Check(inspection, milestone.ScreenMinutes, spot.Member("screenMinutes"));
        }
    }
}
