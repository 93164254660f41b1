using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Dates told before for episodes that are not out, beside what the plan says now.</summary>
internal static class LetterTold
{
    public static IEnumerable<Block> Blocks(Ledger ledger, Outlook outlook) => ledger.Workshop.ToldDates
        .Where(told => told.ToldOn <= ledger.Today && !IsOut(ledger, told) && IsOf(ledger, told, outlook.Series))
        .GroupBy(told => (told.Episode, told.To), (_, same) => same.MaxBy(told => told.ToldOn)!)
        .OrderBy(told => told.ToldOn)
        .Select(told => ToldWording.Line(told, Title(ledger, told), Planned(ledger, told)));

    private static bool IsOut(Ledger ledger, ToldDate told) =>
        ledger.Workshop.Uploads.Any(upload => upload.Episode == told.Episode && upload.Date <= ledger.Today);

    private static bool IsOf(Ledger ledger, ToldDate told, Id series) =>
        (Planned(ledger, told)?.Series ?? ledger.Workshop.Episodes.Find(told.Episode)?.Series) == series;

    private static string Title(Ledger ledger, ToldDate told) =>
        Planned(ledger, told)?.Title ?? ledger.Workshop.Episodes.Find(told.Episode)!.Title;

    private static PlannedEpisode? Planned(Ledger ledger, ToldDate told) =>
        ledger.Plan.Episodes.FirstOrDefault(episode => episode.Id == told.Episode);
}
