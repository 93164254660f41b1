using System.Net;
using EpisodePlanner.Databases;

namespace EpisodePlanner.Web.Tests.Trials;

/// <summary>A PostgreSQL that is away: said clearly, and over by itself when it comes back.</summary>
public sealed class AwayTests(PostgreSqlDatabases databases)
{
    private const string Ready = "/health/ready";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Away_AtTheStart_IsWaitedFor()
    {
        await using var database = await databases.New();
        await using var door = new Door(database);
        await door.Shut();
        await using var app = BuiltApp.Launch(database, door);

        await app.Becomes("/health/live", isThere: true, Stop);
        using var early = await app.Client.GetAsync(new Uri(Ready, UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, early.StatusCode);

        door.Open();
        await app.Becomes(Ready, isThere: true, Stop);
    }

    [Fact]
    public async Task Away_InBetween_IsSaidAndOverByItself()
    {
        await using var database = await databases.New();
        await using var door = new Door(database);
        await using var app = BuiltApp.Launch(database, door);
        await app.Becomes(Ready, isThere: true, Stop);

        await door.Shut();
        using var refused = await app.Client.GetAsync(new Uri("/api/v1/workshops", UriKind.Relative), Stop);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, refused.StatusCode);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType?.MediaType);
        Assert.NotNull(refused.Headers.RetryAfter);
        await app.Becomes(Ready, isThere: false, Stop);

        door.Open();
        await app.Becomes(Ready, isThere: true, Stop);
        await app.Becomes("/api/v1/workshops", isThere: true, Stop);
    }
}
