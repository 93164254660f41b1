using System.CommandLine;
using System.CommandLine.Parsing;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>Moments as they are typed: RFC 3339.</summary>
public static class Moments
{
    private const int FirstYear = 1970;
    private const int LastYear = 2100;

    /// <summary>Reads a moment such as 2027-03-08T08:00:00Z or 2027-03-08T09:00:00+01:00; null where it is none.</summary>
    public static Instant? Parse(string text) =>
        OffsetDateTimePattern.Rfc3339.Parse(text.ToUpperInvariant()) is { Success: true } parsed ? parsed.Value.ToInstant() : null;

    /// <summary>The option for the moment of planning.</summary>
    public static Option<Instant?> Option() => new("--now")
    {
        HelpName = "INSTANT",
        Description = "The moment to plan from, as in 2027-03-08T08:00:00Z or 2027-03-08T09:00:00+01:00; the clock's where left out",
        CustomParser = Read,
    };

    private static Instant? Read(ArgumentResult argument)
    {
        var text = argument.Tokens.Count == 1 ? argument.Tokens[0].Value : "";
        var moment = Parse(text);
        if (moment is null)
        {
            argument.AddError($"--now: '{text}' is not a moment; write a date, a time and an offset, as in 2027-03-08T08:00:00Z or 2027-03-08T09:00:00+01:00.");
        }
        else if (moment.Value.InUtc().Year is < FirstYear or > LastYear)
        {
            argument.AddError($"--now: '{text}' is too far away; the years from {FirstYear} to {LastYear} can be planned.");
            return null;
        }

        return moment;
    }
}
