namespace EpisodePlanner.Planning;

/// <summary>Three values of one quantity stand in order: low, likely, high.</summary>
internal static class EstimateRules
{
    public static void Check(Inspection inspection, ThreePoint? points, Spot at)
    {
        if (points is not null)
        {
            CheckOrder(inspection, at, ("low", points.Low), ("likely", points.Likely), ("high", points.High));
        }
    }

    public static void Check(Inspection inspection, Stage stage, Spot at) =>
        CheckOrder(
            inspection,
            at,
            ("lowHours", stage.LowHours),
            ("hours", stage.Hours),
            ("highHours", stage.HighHours));

    public static void Check(Inspection inspection, ValueList<TailPart> tail, Spot at)
    {
        foreach (var (part, spot) in tail.At(at))
        {
            CheckOrder(
                inspection,
                spot,
                ("lowHours", part.LowHours),
                ("hours", part.Hours),
                ("highHours", part.HighHours));
        }
    }

    private static void CheckOrder(
        Inspection inspection,
        Spot at,
        (string Name, decimal? Value) low,
        (string Name, decimal Value) likely,
        (string Name, decimal? Value) high)
    {
        if (low.Value > likely.Value)
        {
            inspection.Refuse(at.Member(low.Name), Say(low.Name, low.Value.Value, "more", likely.Name, likely.Value));
        }

        if (high.Value < likely.Value)
        {
            inspection.Refuse(
                at.Member(high.Name),
                Say(high.Name, high.Value.Value, "less", likely.Name, likely.Value));
        }
    }

    private static string Say(string name, decimal value, string relation, string likely, decimal likelyValue)
    {
        var (number, other) = (LimitWords.Number(value), LimitWords.Number(likelyValue));
        return $"'{name}' is {number}, {relation} than '{likely}', {other}; the order is low, likely, high.";
    }
}
