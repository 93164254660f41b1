namespace EpisodePlanner.Planning;

/// <summary>Lists the silences beyond promises that a plan foresees.</summary>
public static class SilencesAhead
{
    /// <summary>The series, and the channel last of those that are due on a day, whose promise breaks; the first to break first.</summary>
    public static ValueList<Outlook> Of(Plan plan) => plan.Series.Append(plan.Channel)
        .Where(outlook => outlook.Alarms.Count > 0)
        .OrderBy(outlook => outlook.Alarms[0].Due)
        .ThenBy(outlook => outlook.Series.IsEmpty)
        .ThenBy(outlook => outlook.Name, StringComparer.Ordinal)
        .ToValueList();
}
