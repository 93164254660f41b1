using EpisodePlanner.Checking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>Words, ids and numbers that nobody means well with.</summary>
internal static class Hostile
{
    private static readonly string[] Words =
    [
        "", " ", "\u0000", "a\u0000b", "\u0001\u0008\u001b[31m", "a\r\nX: y", "\t", "\ud800", "\u202eabc", "\ufeff", "e\u0301\u0301\u0301",
        "'; DROP TABLE workshops; --", "\" OR 1=1", "../../etc/passwd", "..%2f..", "%", "{{7*7}}", "<script>alert(1)</script>",
        "null", "NaN", "-1", "2027-02-30", "9999-12-31", "0000-00-00", "25:61", "FREQ=SECONDLY", "FREQ=DAILY;INTERVAL=0",
    ];

    private static readonly string[] Numbers =
        ["-1", "0", "1e400", "-1e400", "1e-400", "0.1", "9223372036854775808", "-9223372036854775809", "2147483648", "1e9", "3.0"];

    private static readonly string[] Ids =
        ["nobody", "-", ".", "..", "A", "a b", "a%2Fb", "%20", "a%0Ab", "%F0%9F%94%A5", "%FF", "0", "-1", "1.5", "99999999999999999999"];

    /// <summary>A word, now and then a very long one.</summary>
    public static string Word(Dice dice) => dice.Chance(10) ? Long(dice, 200_000) : dice.Pick(Words);

    /// <summary>A number as JSON text; not all of them are numbers.</summary>
    public static string Number(Dice dice) => dice.Pick(Numbers);

    /// <summary>A step of a path, escaped as far as a client must.</summary>
    public static string Id(Dice dice) => dice.Chance(10) ? Long(dice, 2_000) : dice.Pick(Ids);

    /// <summary>A value of a header: letters that a client lets out.</summary>
    public static string Header(Dice dice) => dice.Pick(
        ["", "*", "\"1\"", "\"0\"", "\"-1\"", "\"999999\"", "W/\"1\"", "1", "\"1\", \"2\"", "\"1", "abc", "\"" + Long(dice, 2_000) + "\""]);

    private static string Long(Dice dice, int most) => new(dice.Pick(['a', 'x', '9']), dice.Between(65, most));
}
