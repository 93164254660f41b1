using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;
using static EpisodePlanner.Scheduling.Tests.Packed.PlainProblems;

namespace EpisodePlanner.Scheduling.Tests.Packed;

/// <summary>
/// Serial generation of random plain problems, held against the independent checker. Source: definitions; that
/// justification never lengthens is published (Valls, Ballestín and Quintanilla 2005).
/// </summary>
public sealed class PackedGeneratorTests
{
    private const ulong Problems = 2_000;

    [Fact]
    public void Generate_RandomLists_GivesFeasibleSchedulesInWhichNothingCouldStartEarlier()
    {
        for (ulong seed = 1; seed <= Problems; seed++)
        {
            var problem = RandomPlainProblems.Create(seed);
            var generator = new PackedGenerator(problem);
            for (ulong list = 0; list < 3; list++)
            {
                var end = generator.Generate(RandomPlainProblems.Order(problem, new Checking.Dice(seed + list)));
                var schedule = Checked(generator.ToSchedule());
                Assert.Equal(end, schedule.End);
                Assert.True(IsPushedLeft(schedule), $"Seed {seed}: something could start a unit of time earlier.");
            }
        }
    }

    [Fact]
    public void Justify_RandomSchedules_NeverLengthens()
    {
        for (ulong seed = 1; seed <= Problems; seed++)
        {
            var problem = RandomPlainProblems.Create(seed);
            var generator = new PackedGenerator(problem);
            var end = generator.Generate(RandomPlainProblems.Order(problem, new Checking.Dice(seed)));
            for (var again = 0; again < 3; again++)
            {
                var after = generator.Justify();
                Assert.InRange(after, 0, end);
                Assert.Equal(after, Checked(generator.ToSchedule()).End);
                end = after;
            }
        }
    }

    /// <summary>Two pairs of hands, worked out on paper: the second waits a unit of time after the first.</summary>
    [Fact]
    public void Generate_ByHand_PlacesEachAtTheEarliestGap()
    {
        var generator = new PackedGenerator(Sound(OneStation(2, [4, 1, 2, 3], new NetworkLink(1, 3, LinkKind.After, 1))));
        Assert.Equal(6, generator.Generate([1, 0, 3, 2]));
        Assert.Equal([0, 0, 4, 2], generator.ToSchedule().Starts);
    }

    [Fact]
    public void Generate_ManySchedules_AllocatesNothing()
    {
        foreach (var longest in (long[])[9, 900])
        {
            var problem = Sound(OneStation(3, [.. Enumerable.Range(0, 60).Select(i => 1 + (i * 7 % longest))]));
            var generator = new PackedGenerator(problem);
            var order = RandomPlainProblems.Order(problem, new Checking.Dice(1));
            Generate(generator, order, 10);

            // The runtime itself allocates now and then, when it compiles code anew; a schedule that allocates does so every time.
            Assert.Equal(0, Enumerable.Range(0, 5).Min(_ => Allocated(generator, order)));
        }
    }

    private static long Allocated(PackedGenerator generator, int[] order)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        Generate(generator, order, 400);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    [Fact]
    public void Generate_OtherLists_Throws()
    {
        var generator = new PackedGenerator(Sound(OneStation(1, [1, 1], new NetworkLink(0, 1, LinkKind.After))));
        Assert.Throws<ArgumentException>(() => generator.Generate([0]));
        Assert.Throws<ArgumentException>(() => generator.Generate([0, 0]));
        Assert.Throws<ArgumentException>(() => generator.Generate([0, 2]));
        Assert.Throws<ArgumentException>(() => generator.Generate([1, 0]));
        Assert.Equal(2, generator.Generate([0, 1]));
    }

    private static void Generate(PackedGenerator generator, int[] order, int times)
    {
        for (var i = 0; i < times; i++)
        {
            generator.Generate(order);
            generator.Justify();
        }
    }

    /// <summary>Whether no activity alone could start one unit of time earlier.</summary>
    private static bool IsPushedLeft(PackedSchedule schedule) => Enumerable.Range(0, schedule.Problem.Count).All(i =>
        schedule.Starts[i] == 0
        || PackedChecker.Check(PackedSchedule.FromStarts(schedule.Problem, schedule.Starts.SetItem(i, schedule.Starts[i] - 1))).Count > 0);
}
