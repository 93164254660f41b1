namespace EpisodePlanner.Checking.Textbook;

/// <summary>
/// Seven activities with three-point estimates (a, m, b), each as long as its mean (a + 4m + b) / 6. In sixths of a
/// day all lengths are whole.
/// </summary>
internal static class TaylorThreePoints
{
    public static TextbookNetwork Network { get; } = new(
        "Taylor, seven activities with three points",
        "Taylor, Introduction to Management Science, ch. 8 [published, but for the links: from memory of its figure]",
        "sixth of a day",
        [
            // (a, m, b): published, in the source above. The mean: Malcolm et al., Operations Research 7 (1959).
            new("1", SixTimesMean(5, 8, 17)),
            new("2", SixTimesMean(7, 10, 13)),
            new("3", SixTimesMean(3, 5, 7)),
            new("4", SixTimesMean(1, 3, 5)),
            new("5", SixTimesMean(4, 6, 8)),
            new("6", SixTimesMean(3, 3, 3)),
            new("7", SixTimesMean(3, 4, 5)),
        ],
        [
            // From memory: the arrows 1-2, 1-3, 2-3, 2-4, 3-4, 3-5 and 4-5.
            new("1", "3"), new("1", "4"), new("2", "5"), new("2", "6"),
            new("3", "5"), new("3", "6"), new("4", "7"), new("5", "7"),
        ],
        [
            // Float 0 along the critical path: published, it is how the source finds that path.
            new("1", TotalFloat: 0),
            new("3", TotalFloat: 0),
            new("5", TotalFloat: 0),
            new("7", TotalFloat: 0),
        ],
        24 * 6, // 24 days: published, in the source above
        ["1", "3", "5", "7"]); // published, in the source above

    private static long SixTimesMean(long a, long m, long b) => a + 4 * m + b;
}
