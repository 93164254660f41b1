using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Scheduling.Tests.Packed;

/// <summary>
/// One meaning, two kernels: a plain problem whose stations have one unit each, told to both, gives the same starts for
/// the same list. Source: the definition of serial generation.
/// </summary>
public sealed class TwoKernelsTests
{
    [Fact]
    public void Generate_UnaryProblems_AgreesWithTheIntervalKernel()
    {
        for (ulong seed = 1; seed <= 1_000; seed++)
        {
            var plain = RandomPlainProblems.Unary(seed);
            var order = RandomPlainProblems.Order(plain, new Checking.Dice(seed));
            var generator = new PackedGenerator(plain);
            generator.Generate(order);
            var packed = PlainProblems.Checked(generator.ToSchedule());
            var bench = Bench.Sound.Search(AsBench(plain), schedules: 1, accepted: order).Schedule;
            Assert.Equal(packed.Starts, Enumerable.Range(0, plain.Count).Select(bench.Start));
            Assert.Equal(packed.End, bench.End);
        }
    }

    /// <summary>Every station is a person, every activity unbroken work; one without a station or time is a wait.</summary>
    private static BenchProblem AsBench(PackedProblem plain)
    {
        var horizon = plain.Horizon + 1;
        var always = IntervalCalendar.Always(horizon);
        return Bench.Sound.Problem(new BenchInput
        {
            Horizon = horizon,
            Presence = always,
            Stations = [.. plain.Stations.Select(station => new Station(station.Name, StationKind.Person, always))],
            Stages = [.. Enumerable.Range(0, plain.Count).Select(i => Stage(plain, i))],
            Links = [.. plain.Network.Links.Select(link => new BenchLink(link.From, link.To, link.Kind) { Lag = (int)link.Lag })],
        });
    }

    private static BenchStage Stage(PackedProblem plain, int activity)
    {
        var stations = Enumerable.Range(0, plain.Stations.Length).Where(s => plain.Demands[activity][s] > 0).ToArray();
        var minutes = (int)plain.Network.Activities[activity].Duration;
        return new BenchStage
        {
            Name = plain.Network.Activities[activity].Name,
            Kind = stations.Length == 0 ? StageKind.Wait : StageKind.Attended,
            Minutes = minutes,
            MinimumBlock = Math.Max(1, minutes),
            Modes = [new StageMode { Stations = stations }],
        };
    }
}
