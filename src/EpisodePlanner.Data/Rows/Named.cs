namespace EpisodePlanner.Data.Rows;

/// <summary>Ids out of columns.</summary>
internal static class Named
{
    /// <summary>The id, or nothing.</summary>
    public static Planning.Id? Id(string? text) => text is null ? null : new Planning.Id(text);
}
