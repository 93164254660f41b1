namespace EpisodePlanner.Checking.Textbook;

/// <summary>Networks with known dates. Whatever computes dates without limits on hands must agree with them.</summary>
public static class TextbookNetworks
{
    /// <summary>Ten activities, finish-to-start links only; all dates and floats.</summary>
    public static TextbookNetwork PortaVac => Textbook.PortaVac.Network;

    /// <summary>Thirteen arcs, one a dummy of no length; all dates, total float.</summary>
    public static TextbookNetwork TaylorArrows => Textbook.TaylorArrows.Network;

    /// <summary>Fourteen activities, finish-to-start links only; all dates and floats.</summary>
    public static TextbookNetwork ReliableConstruction => Textbook.ReliableConstruction.Network;

    /// <summary>Seven activities as long as the means of their three points; the critical path.</summary>
    public static TextbookNetwork TaylorThreePoints => Textbook.TaylorThreePoints.Network;

    /// <summary>Fourteen activities, some tied by their starts; all dates and floats.</summary>
    public static TextbookNetwork StartToStart => Textbook.StartToStart.Network;

    /// <summary>Six activities, every kind of link, with lags; all dates and floats.</summary>
    public static TextbookNetwork AllLinkKinds => Textbook.AllLinkKinds.Network;

    /// <summary>Nine activities, finish-to-start links only; total float.</summary>
    public static TextbookNetwork NineActivities => Textbook.NineActivities.Network;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<TextbookNetwork> All { get; } =
    [
        PortaVac, TaylorArrows, ReliableConstruction, TaylorThreePoints, StartToStart, AllLinkKinds, NineActivities,
    ];
}
