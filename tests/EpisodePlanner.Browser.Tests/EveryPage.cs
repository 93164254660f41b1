namespace EpisodePlanner.Browser.Tests;

/// <summary>The pages that every rule of access and layout is held against, on the demo workshop.</summary>
internal static class EveryPage
{
    public static IReadOnlyList<string> All { get; } =
    [
        "", "/bench", "/silence", "/story", "/story/cuts", "/story/cuts/ferry", "/story/cuts/nobody", "/silence/of/ferry", "/silence/channel", "/series", "/series/ferry", "/series/ferry/rest", "/series/ferry/rest?until=2027-02-15", "/series/ferry/rest?finish=yes", "/suppose", "/story/now", "/stations", "/why/ferry-e8", "/why/nobody", "/cadence", "/letter", "/changes", "/settings",
        "/settings/all", "/settings/about", "/edit/tasks/print-motor-bell", "/edit/series/ferry", "/new/people", "/new/log",
        "/edit/tasks/no-such-task",
    ];

    public static TheoryData<string> Paths => [.. All];
}
