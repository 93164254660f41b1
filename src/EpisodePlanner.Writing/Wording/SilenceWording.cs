using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>A silence that is too long, said honestly. A promise that was only assumed is never called one.</summary>
internal static class SilenceWording
{
    public static Block Of(Outlook outlook, SilenceAhead silence, LocalDate today) => outlook.PromiseAssumed
        ? Say.Paragraph(Quiet(outlook, silence))
        : Say.Paragraph(Due(outlook, silence, today), Ends(outlook, silence));

    private static Sentence Due(Outlook outlook, SilenceAhead silence, LocalDate today)
    {
        var (promise, day) = (PromiseOf(outlook.Promise), InWords.Day(silence.Due));
        var fact = Fact.Of(outlook, silence);
        return silence.Due < today
            ? Say.From($"The promise is {promise}. An upload was due by {day}, and that day has passed.", fact)
            : Say.From($"The promise is {promise}. An upload is due by {day}, and the plan does not keep that.", fact);
    }

    private static Sentence Ends(Outlook outlook, SilenceAhead silence) => silence.Ends is { } day
        ? Say.From(
            $"The upload that ends the silence is planned for {InWords.Day(day)}, {InWords.Days(silence.DaysOver)} late.",
            Fact.Of(outlook, silence))
        : Say.From($"No upload that ends the silence is planned yet.", Fact.Of(outlook, silence));

    private static Sentence Quiet(Outlook outlook, SilenceAhead silence)
    {
        var length = outlook.Forecast.FirstOrDefault(gap => gap.To == silence.Ends);
        var fact = Fact.Of(outlook, silence);
        return (silence.Ends, length) switch
        {
            ({ } day, { } gap) => Say.From(
                $"That makes {InWords.Days(gap.Days)} without an upload, from {InWords.Day(gap.From)} to {InWords.Day(day)}.",
                fact),
            (null, { } gap) => Say.From(
                $"The last upload known to the plan is that of {InWords.Day(gap.From)}; none after it is planned yet.",
                fact),
            _ => Say.From($"No upload that ends the silence is planned yet.", fact),
        };
    }

    private static string PromiseOf(Promise promise) => promise switch
    {
        { UploadsPerMonth: 1 } => "an upload a month",
        { UploadsPerMonth: { } uploads } => $"{uploads} uploads a month",
        _ => $"at most {InWords.Days(promise.LongestSilenceDays ?? 0)} between uploads",
    };
}
