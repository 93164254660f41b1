using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>How much can be said in the screen minutes that were given.</summary>
/// <remarks>
/// 150 words a minute: National Center for Voice and Speech, a rate of English conversation that is quoted widely.
/// </remarks>
internal static class SpeechWording
{
    private const int WordsAMinute = 150;

    public static IEnumerable<Sentence> Hint(IReadOnlyCollection<Milestone> milestones)
    {
        var given = milestones.Where(milestone => milestone.ScreenMinutes is not null).ToList();
        if (given.Count == 0)
        {
            return [];
        }

        var minutes = given.Sum(milestone => milestone.ScreenMinutes!.Likely);
        var words = (int)decimal.Round(minutes * WordsAMinute / 10) * 10;
        var facts = given.Select(Fact.Of).ToList();
        return
        [
            Say.From($"The milestones come to {minutes} min on screen{Share(given.Count, milestones.Count)}.", facts),
            Say.From($"Spoken all through at {WordsAMinute} words a minute that is about {InWords.Number(words)} words.", facts),
        ];
    }

    private static Markdown Share(int given, int all) =>
        given == all ? default : Markdown.Of($", as far as given ({given} of {all})");
}
