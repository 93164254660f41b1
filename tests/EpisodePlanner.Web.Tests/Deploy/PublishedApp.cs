using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Deploy;

/// <summary>
/// The app as the publish script makes it, in a temporary folder that is read-only afterwards; made once, for the first
/// test that asks.
/// </summary>
public sealed class PublishedApp : IAsyncDisposable
{
    private readonly Papers papers = new();
    private readonly Lazy<Task<string>> program;

    public PublishedApp() => program = new(Publish);

    /// <summary>The folder that it was published into.</summary>
    public string Folder => Path.Combine(papers.Folder, "app");

    /// <summary>The assembly to start.</summary>
    public Task<string> Program => program.Value;

    /// <summary>Every file with its length and its time, to see that nothing was written.</summary>
    public IReadOnlyList<string> Look() =>
    [
        .. new DirectoryInfo(Folder).EnumerateFiles("*", SearchOption.AllDirectories)
            .Select(file => $"{file.FullName} {file.Length} {file.LastWriteTimeUtc:O}")
            .Order(StringComparer.Ordinal),
    ];

    public async ValueTask DisposeAsync()
    {
        if (Directory.Exists(Folder))
        {
            await Must("chmod", "-R", "u+w", Folder);
        }

        papers.Dispose();
    }

    private static async Task Must(string program, params string[] arguments)
    {
        var answer = await Tool.Run(program, arguments);
        Assert.True(answer.Code == 0, answer.Output + answer.Error);
    }

    private async Task<string> Publish()
    {
        await Must("bash", Path.Combine("deploy", "publish"), Folder);
        await Must("chmod", "-R", "a-w", Folder);
        return Path.Combine(Folder, "EpisodePlanner.Web.dll");
    }
}
