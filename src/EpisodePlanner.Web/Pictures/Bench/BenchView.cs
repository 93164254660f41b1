using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>What part of the bench is drawn.</summary>
/// <param name="FirstDay">The day at whose noon the first row begins.</param>
/// <param name="Days">How many rows, 1 to 62.</param>
/// <param name="Width">The width of the drawing: 1,120 for a desk, 420 for a phone.</param>
public sealed record BenchView(LocalDate FirstDay, int Days, int Width)
{
    /// <summary>The width for a desk.</summary>
    public const int Desk = 1_120;

    /// <summary>The width for a phone.</summary>
    public const int Phone = 420;

    /// <summary>The day whose row holds a moment: before noon it is the day before.</summary>
    public static LocalDate RowOf(LocalDateTime moment) =>
        moment.TimeOfDay < new LocalTime(12, 0) ? moment.Date.PlusDays(-1) : moment.Date;

    /// <summary>A view that begins with the row of the moment of planning.</summary>
    public static BenchView FromNow(Plan plan, int days, int width) => new(RowOf(plan.Now.LocalDateTime), days, width);
}
