using System.Globalization;
using System.Text;

namespace EpisodePlanner.Web.Forms;

/// <summary>What members and values are called in forms.</summary>
internal static class FormWords
{
    private static readonly Dictionary<string, string> Own = new()
    {
        ["lowHours"] = "Hours, hardly ever less",
        ["highHours"] = "Hours, hardly ever more",
        ["hours"] = "Hours",
        ["atMostMinutes"] = "At most so many minutes later",
        ["lagMinutes"] = "At least so many minutes later",
        ["onceOnly"] = "Can be taken once only",
        ["on"] = "First day",
        ["through"] = "Last day",
        ["at"] = "When",
        ["minutes"] = "Minutes",
        ["payoff"] = "An episode may end here",
        ["togetherWithNext"] = "Shown in one episode with the next",
        ["fewestMilestones"] = "Milestones an episode shows at least",
        ["tells"] = "The failure it tells about",
        ["cutPinned"] = "What it shows is pinned: no proposal moves it",
    };

    /// <summary>What is asked first, record by record; the other members stand apart. A record that is not named asks all.</summary>
    private static readonly Dictionary<string, string[]> First = new()
    {
        ["workTask"] = ["name", "kind", "milestone", "stages", "links", "shots", "mayRunAlone", "note"],
        ["stage"] = ["kind", "hours", "needs"],
        ["taskLink"] = ["task", "kind"],
        ["shot"] = ["name", "moment", "onceOnly", "required", "state"],
        ["openHours"] = ["weekly", "dated"],
        ["place"] = ["name", "kind", "hours", "setUpMinutes"],
        ["machine"] = ["name", "kind", "mayRunAlone", "place"],
        ["series"] = ["name", "state", "restingUntil", "promise", "milestones"],
        ["milestone"] = ["name", "payoff", "togetherWithNext"],
        ["episode"] = ["title", "series", "milestones", "pinnedSlot", "note"],
        ["slotRule"] = ["from", "at", "rule", "windowMinutes"],
        ["upload"] = ["series", "date", "title", "episode"],
        ["logEntry"] = ["at", "task", "stage", "minutes", "outcome", "note"],
        ["settings"] = ["maker", "seriesPromiseDays", "channelPromiseDays", "tail", "safetyLeadHours", "earlyViewHours"],
        ["booking"] = ["place", "from", "to", "note"],
        ["tailPart"] = ["kind", "hours"],
    };

    /// <summary>Whether a member is filled in now and then only.</summary>
    public static bool IsRare(string owner, string member) =>
        First.TryGetValue(owner, out var first) && !first.Contains(member);

    /// <summary>A member's name as words: "runsAlone" is "Runs alone".</summary>
    public static string Label(string member) => Own.GetValueOrDefault(member) ?? Capital(Split(member));

    /// <summary>A value's name as words: "talkToCamera" is "talk to camera".</summary>
    public static string Value(string value) => Split(value);

    /// <summary>One of a list, in the singular: "stages" is "stage".</summary>
    public static string Item(string member) => member switch
    {
        "series" => "series",
        "weekly" => "weekly hours",
        "dated" => "dated hours",
        "busy" => "busy time",
        "quiet" => "quiet hours",
        "tail" => "part of the tail",
        _ => Split(member).TrimEnd('s'),
    };

    private static string Split(string name)
    {
        var words = new StringBuilder();
        foreach (var c in name)
        {
            _ = char.IsUpper(c) ? words.Append(' ').Append(char.ToLower(c, CultureInfo.InvariantCulture)) : words.Append(c);
        }

        return words.ToString();
    }

    private static string Capital(string words) => char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..];
}
