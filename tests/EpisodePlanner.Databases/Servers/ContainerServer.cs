using Docker.DotNet;
using DotNet.Testcontainers.Builders;
using Microsoft.Extensions.Logging.Abstractions;
using Testcontainers.PostgreSql;

namespace EpisodePlanner.Databases.Servers;

/// <summary>A PostgreSQL in a container, where an engine answers; its reaper removes it after a crash.</summary>
internal static class ContainerServer
{
    private const string Image = "postgres:17-alpine";

    public static async Task<PostgreSqlServer?> TryStart(List<string> reasons)
    {
        try
        {
            var container = Build();
            await container.StartAsync();
            return new PostgreSqlServer(container.GetConnectionString(), container.DisposeAsync);
        }
        catch (Exception refused) when (refused is DockerUnavailableException or DockerApiException)
        {
            reasons.Add("no container engine answers, or it lacks the image");
            return null;
        }
    }

    private static PostgreSqlContainer Build() => new PostgreSqlBuilder(Image)
        .WithTmpfsMount("/var/lib/postgresql/data")
        .WithCommand([.. PostgreSqlServer.Settings.SelectMany(each => new[] { "-c", $"{each.Name}={each.Value}" })])
        .WithLogger(NullLogger.Instance)
        .Build();
}
