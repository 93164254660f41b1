namespace EpisodePlanner.Planning.Tests.Cadences;

public sealed class PinwheelTests
{
    /// <summary>Computed, the project's outside checks §4; (2, 3, x) never: Holte et al. 1989, published.</summary>
    [Theory]
    [InlineData(3, 4, 5, 7)]
    [InlineData(2, 4, 6, 12)]
    [InlineData(2, 3, 7)]
    [InlineData(2, 3, 1000)]
    [InlineData(1, 2)]
    public void Solve_NoWay_IsProved(params int[] intervals) =>
        Assert.IsType<PinwheelResult.Impossible>(Pinwheel.Solve(intervals));

    /// <summary>Computed, the project's outside checks §4.</summary>
    [Theory]
    [InlineData(2, 4, 8, 8)]
    [InlineData(3, 4, 5, 8)]
    [InlineData(4, 5, 5, 7, 7)]
    [InlineData(1)]
    [InlineData(3)]
    public void Solve_AWay_IsARotationThatKeepsThem(params int[] intervals)
    {
        var holds = Assert.IsType<PinwheelResult.Holds>(Pinwheel.Solve(intervals));

        Assert.True(Pinwheel.Keeps(holds.Rotation, intervals));
    }

    /// <summary>Published: A. Kawamura, STOC 2024: whatever needs at most 5/6 of the slots can be done.</summary>
    [Fact]
    public void Solve_AtMostFiveSixths_AlwaysHasAWay()
    {
        var random = new Random(1);
        var seen = 0;
        while (seen < 300)
        {
            var intervals = Enumerable.Range(0, random.Next(2, 7)).Select(_ => random.Next(2, 20)).ToArray();
            if (Density(intervals) <= 5m / 6)
            {
                seen++;
                var holds = Assert.IsType<PinwheelResult.Holds>(Pinwheel.Solve(intervals));
                Assert.True(Pinwheel.Keeps(holds.Rotation, intervals), string.Join(' ', intervals));
            }
        }
    }

    /// <summary>Independent: the greatest set of states from which some turn leads back into the set, by crossing out.</summary>
    [Fact]
    public void Solve_EveryThreeAndFour_AgreesWithCrossingOut()
    {
        var (ways, none) = (0, 0);
        foreach (var intervals in Triples().Concat(Quadruples()))
        {
            var result = Pinwheel.Solve(intervals);
            var holds = CrossingOut(intervals);
            Assert.True(holds ? result is PinwheelResult.Holds : result is PinwheelResult.Impossible, string.Join(' ', intervals));
            (ways, none) = holds ? (ways + 1, none) : (ways, none + 1);
        }

        Assert.True(ways > 50 && none > 50);
    }

    [Fact]
    public void Solve_NobodyAtAll_Holds() => Assert.Empty(Assert.IsType<PinwheelResult.Holds>(Pinwheel.Solve([])).Rotation);

    [Fact]
    public void Solve_FewStates_SaysThatItDoesNotKnow() =>
        Assert.IsType<PinwheelResult.Unknown>(Pinwheel.Solve([3, 4, 5, 7], mostStates: 3));

    [Fact]
    public void Solve_IntervalOfNothing_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => Pinwheel.Solve([2, 0]));

    [Theory]
    [InlineData("0 1 0 2", "2 4 4", true)]
    [InlineData("0 1 0 2", "2 4 3", false)]
    [InlineData("0 0 1 2", "2 4 4", false)]
    [InlineData("0 1", "2 2 9", false)]
    public void Keeps_LooksAtTheGreatestGapAround(string rotation, string intervals, bool keeps) =>
        Assert.Equal(keeps, Pinwheel.Keeps(Numbers(rotation), Numbers(intervals)));

    private static int[] Numbers(string text) => [.. text.Split(' ').Select(int.Parse)];

    private static decimal Density(int[] intervals) => intervals.Sum(interval => 1m / interval);

    private static IEnumerable<int[]> Triples() =>
        from a in Enumerable.Range(1, 6) from b in Enumerable.Range(a, 7) from c in Enumerable.Range(b, 7) where c <= 9 select (int[])[a, b, c];

    private static IEnumerable<int[]> Quadruples() =>
        from a in Enumerable.Range(2, 3)
        from b in Enumerable.Range(a, 4)
        from c in Enumerable.Range(b, 4)
        from d in Enumerable.Range(c, 4)
        where d <= 8
        select (int[])[a, b, c, d];

    private static bool CrossingOut(int[] intervals)
    {
        var alive = States(intervals, 0).ToHashSet();
        int before;
        do
        {
            before = alive.Count;
            alive.RemoveWhere(state => !Enumerable.Range(0, intervals.Length).Any(turn => alive.Contains(After(state, turn, intervals))));
        }
        while (alive.Count < before);

        return alive.Count > 0;
    }

    private static IEnumerable<string> States(int[] intervals, int from) => from == intervals.Length
        ? [""]
        : Enumerable.Range(1, intervals[from]).SelectMany(left => States(intervals, from + 1), (left, rest) => $"{left} {rest}");

    private static string After(string state, int turn, int[] intervals) =>
        string.Concat(state.TrimEnd().Split(' ').Select((left, i) => $"{(i == turn ? intervals[i] : int.Parse(left) - 1)} "));
}
