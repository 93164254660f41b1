namespace EpisodePlanner.Trials.Asking;

/// <summary>The server's list of workshops, over all its pages.</summary>
internal static class WorkshopList
{
    private const string Path = $"{Api.Root}/workshops";

    /// <summary>Every workshop's name and path.</summary>
    public static async Task<IReadOnlyList<(string Name, string Path)>> Read(Api api)
    {
        var found = new List<(string Name, string Path)>();
        for (string? next = ""; next is not null;)
        {
            var page = (await api.Get(next.Length == 0 ? Path : $"{Path}?after={next}")).Must("GET workshops").Json;
            found.AddRange(page["items"]!.AsArray().Select(
                line => (line!["name"]!.GetValue<string>(), $"{Path}/{line["id"]!.GetValue<string>()}")));
            next = page["next"]?.GetValue<string>();
        }

        return found;
    }
}
