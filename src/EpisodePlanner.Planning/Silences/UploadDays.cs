using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>The days on which uploads were made, ascending, each day once.</summary>
public static class UploadDays
{
    /// <summary>A series' own; no other series' upload ends its silence.</summary>
    public static ValueList<LocalDate> OfSeries(Workshop workshop, Id series) =>
        Ordered(workshop.Uploads.Where(upload => upload.Series == series));

    /// <summary>Those of the whole channel.</summary>
    public static ValueList<LocalDate> OfChannel(Workshop workshop) => Ordered(workshop.Uploads);

    private static ValueList<LocalDate> Ordered(IEnumerable<Upload> uploads) =>
        uploads.Select(upload => upload.Date).Distinct().Order().ToValueList();
}
