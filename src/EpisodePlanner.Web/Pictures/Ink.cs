namespace EpisodePlanner.Web.Pictures;

/// <summary>The inks of one theme, as #rrggbb; pictures and pages share them.</summary>
public sealed record Ink
{
    /// <summary>What everything stands on.</summary>
    public required string Paper { get; init; }

    /// <summary>Sheets laid on the paper.</summary>
    public required string Sheet { get; init; }

    /// <summary>Words and the chain.</summary>
    public required string Words { get; init; }

    /// <summary>Words of less weight.</summary>
    public required string Soft { get; init; }

    /// <summary>Rules between things.</summary>
    public required string Rule { get; init; }

    /// <summary>Closed hours.</summary>
    public required string Closed { get; init; }

    /// <summary>Hands at work; links and buttons.</summary>
    public required string Hands { get; init; }

    /// <summary>Words on <see cref="Hands"/>.</summary>
    public required string OnHands { get; init; }

    /// <summary>Machine runs.</summary>
    public required string Run { get; init; }

    /// <summary>What goes beyond a promise, and what is wrong.</summary>
    public required string Over { get; init; }

    /// <summary>Dark ink on light paper.</summary>
    public static Ink Light { get; } = new()
    {
        Paper = "#f4f1e8",
        Sheet = "#fffdf7",
        Words = "#1c2427",
        Soft = "#515c60",
        Rule = "#cfc8b6",
        Closed = "#e4decd",
        Hands = "#196792",
        OnHands = "#ffffff",
        Run = "#ad6b19",
        Over = "#521026",
    };

    /// <summary>Light ink on dark paper.</summary>
    public static Ink Dark { get; } = new()
    {
        Paper = "#12181b",
        Sheet = "#1a2226",
        Words = "#efe9da",
        Soft = "#b3b8b3",
        Rule = "#3b474b",
        Closed = "#212b2f",
        Hands = "#4598d0",
        OnHands = "#0d1416",
        Run = "#cb8040",
        Over = "#f3cddb",
    };

    /// <summary>The inks of a theme.</summary>
    public static Ink Of(PictureTheme theme) => theme == PictureTheme.Dark ? Dark : Light;
}
