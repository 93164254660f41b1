using EpisodePlanner.Planning;
using NodaTime;
using static EpisodePlanner.Data.Tests.StoreBench;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Data.Tests;

/// <summary>A request that is repeated under its key is done once.</summary>
public abstract class RequestKeySuite(StoreDatabases databases)
{
    private static readonly RequestKey Key = new("k-1", "abc");

    [Fact]
    public async Task Make_Repeated_AnswersAsTheFirstTime()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);

        var first = Assert.IsType<Made>(await bench.Try(made.Id, new NameChange("Shed"), new Expectation.WorkshopAt([1]), Key));
        await bench.Make(made.Id, new NameChange("Barn"));
        var second = Assert.IsType<Made>(
            await (await bench.Again()).Try(made.Id, new NameChange("Shed"), new Expectation.WorkshopAt([1]), Key));

        Assert.Equal((false, true), (first.IsRepetition, second.IsRepetition));
        Assert.Equal(first.Change, second.Change);
        Assert.Equal((3, "Barn"), (second.Now.Version, second.Now.Workshop.Name));
    }

    [Fact]
    public async Task Make_AnotherRequestUnderTheKey_IsRefused()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Try(made.Id, new NameChange("Shed"), null, Key);

        Assert.IsType<KeyReused>(await bench.Try(made.Id, new NameChange("Barn"), null, Key with { Fingerprint = "abd" }));
    }

    [Fact]
    public async Task Create_Repeated_MakesOneWorkshop()
    {
        await using var bench = await databases.New();
        var other = await bench.Again();

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 20).Select(i =>
            (i % 2 == 0 ? bench : other).Store.Create(Sound, Maker, Key, Stop)));

        var made = outcomes.Select(Assert.IsType<Made>).ToList();
        Assert.Single(made, one => !one.IsRepetition);
        Assert.Single(made.Select(one => one.Now.Id).Distinct());
        Assert.Single(await bench.Store.List(Stop));
        Assert.IsType<KeyReused>(await bench.Store.Create(Sound, Maker, Key with { Fingerprint = "abd" }, Stop));
    }

    [Fact]
    public async Task Make_RepeatedAtOnce_IsMadeOnce()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        var other = await bench.Again();

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 20).Select(i =>
            (i % 2 == 0 ? bench : other).Try(made.Id, new NameChange("Shed"), null, Key)));

        Assert.Single(outcomes.Select(Assert.IsType<Made>), one => !one.IsRepetition);
        Assert.Equal(2, (await bench.Now(made.Id)).Version);
    }

    [Fact]
    public async Task Purge_ForgetsKeysAfterADay_AndNeverBefore()
    {
        await using var bench = await databases.New();
        var made = await bench.Create(Sound);
        await bench.Try(made.Id, new NameChange("Shed"), null, Key);

        bench.Clock.Move(Duration.FromDays(1) - Duration.FromMilliseconds(1));
        Assert.Equal(0, await bench.Store.Purge(Stop));
        bench.Clock.Move(Duration.FromMilliseconds(1));
        Assert.Equal(1, await bench.Store.Purge(Stop));

        Assert.IsType<Made>(await bench.Try(made.Id, new NameChange("Barn"), null, Key with { Fingerprint = "abd" }));
    }
}
