using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class LinkCirclesTests
{
    [Fact]
    public void Check_CircleNamesItsMembersOnly() => Breaks.One(
        WithTask("cut-tube", t => t with { Links = [.. t.Links, SampleTasks.After("paint")] }),
        "$.tasks['cut-tube'].links[1].task",
        "'cut tube' waits for 'paint', which waits for 'weld frame', which waits for 'cut tube': "
            + "a circle that can never begin; remove one of these links.");

    [Fact]
    public void Check_TaskWaitsForItself() => Breaks.One(
        WithTask("sweep", t => t with { Links = [SampleTasks.After("sweep")] }),
        "$.tasks['sweep'].links[0].task",
        "'sweep' waits for itself; remove this link.");

    [Fact]
    public void Check_MembersOfOneName() => Breaks.One(
        Chain(("a", "drill", ["b"]), ("b", "drill", ["a"])),
        "$.tasks['a'].links[0].task",
        "'drill' (a) waits for 'drill' (b), which waits for 'drill' (a): "
            + "a circle that can never begin; remove one of these links.");

    [Fact]
    public void Check_EveryKnotOfCirclesIsTold() => Breaks.At(
        Chain(("a", "a", ["b"]), ("b", "b", ["a", "c"]), ("c", "c", ["d"]), ("d", "d", ["e", "c"]), ("e", "e", [])),
        "$.tasks['a'].links[0].task",
        "$.tasks['c'].links[0].task");

    [Fact]
    public void Check_DiamondIsNoCircle() => Assert.Empty(WorkshopRules.Check(
        Chain(("a", "a", ["b", "c"]), ("b", "b", ["d"]), ("c", "c", ["d"]), ("d", "d", []))));

    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 1)]
    public void Check_TenThousandInAChain(bool closed, int reasons)
    {
        var tasks = Enumerable.Range(0, 10_000)
            .Select(i => (Id: $"t{i:D5}", Name: $"step {i}", Waits: new[] { $"t{(i + 1) % 10_000:D5}" }))
            .ToArray();
        if (!closed)
        {
            tasks[^1].Waits = [];
        }

        Assert.Equal(reasons, WorkshopRules.Check(Chain(tasks)).Count);
    }

    [Fact]
    public void Check_NamesTrueMembersInRandomNets()
    {
        var random = new Random(20260102);
        for (var round = 0; round < 200; round++)
        {
            var tasks = Enumerable.Range(0, 12).Select(i => RandomTask(i, random)).ToArray();
            var told = WorkshopRules.Check(Chain(tasks));
            foreach (var reason in told)
            {
                AssertTrue(reason, tasks.ToDictionary(t => t.Id, t => t.Waits));
            }

            var named = told.SelectMany(Members).ToHashSet();
            var rest = tasks
                .Where(t => !named.Contains(t.Id))
                .Select(t => t with { Waits = [.. t.Waits.Where(w => !named.Contains(w))] });
            Assert.Empty(WorkshopRules.Check(Chain([.. rest])));
        }
    }

    private static (string Id, string Name, string[] Waits) RandomTask(int number, Random random)
    {
        var waits = Enumerable.Range(0, random.Next(3)).Select(_ => $"t{random.Next(12):D2}");
        return ($"t{number:D2}", $"t{number:D2}", [.. waits]);
    }

    private static void AssertTrue(Reason reason, Dictionary<string, string[]> waits)
    {
        var members = Members(reason);
        foreach (var (i, member) in members.Index())
        {
            Assert.Contains(members[(i + 1) % members.Length], waits[member]);
        }
    }

    private static string[] Members(Reason reason) =>
        [.. reason.Says.Split('\'').Where((_, i) => i % 2 == 1).Distinct()];

    private static Workshop Chain(params (string Id, string Name, string[] Waits)[] tasks) => new()
    {
        Format = 1,
        Name = "Chain",
        Zone = "UTC",
        Tasks = tasks.Select(t => new WorkTask
        {
            Id = Id(t.Id),
            Name = t.Name,
            Stages = [SampleTasks.Attended(1)],
            Links = [.. t.Waits.Select(SampleTasks.After)],
        }).ToKeyed(),
    };
}
