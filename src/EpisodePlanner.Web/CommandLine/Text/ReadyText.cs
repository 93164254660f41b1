using EpisodePlanner.Data;
using EpisodePlanner.Web.Composition;

namespace EpisodePlanner.Web.CommandLine.Text;

/// <summary>What a server says once it listens.</summary>
internal static partial class ReadyText
{
    /// <summary>Where it listens, where the data is, and what is amiss.</summary>
    public static IReadOnlyList<string> Write(IEnumerable<string> urls, ServerSettings settings, StorageTroubleException? trouble) =>
    [
        $"Episode Planner listens at {string.Join(", ", urls)}.",
        $"The data is in {settings.DataPlace}.",
        .. trouble is null ? [] : (string[])[$"It is not ready yet: {trouble.Message} It goes on trying; {Serving.Health.Ready} tells more."],
    ];

    [LoggerMessage(Level = LogLevel.Information, Message = "{Says}")]
    public static partial void Log(ILogger log, string says);
}
