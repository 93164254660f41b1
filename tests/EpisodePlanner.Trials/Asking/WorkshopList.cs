namespace EpisodePlanner.Trials.Asking;

/// <summary>The server's list of workshops.</summary>
internal static class WorkshopList
{
    private const string Path = $"{Api.Root}/workshops";

    /// <summary>Every workshop's name and path.</summary>
    public static async Task<IReadOnlyList<(string Name, string Path)>> Read(Api api) =>
    [
        .. (await api.Get(Path)).Must("GET workshops").Json["items"]!.AsArray()
            .Select(line => (line!["name"]!.GetValue<string>(), $"{Path}/{line["id"]!.GetValue<string>()}")),
    ];
}
