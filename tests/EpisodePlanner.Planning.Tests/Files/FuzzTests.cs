using System.Text;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>Damages a valid file in seeded ways; whatever comes out is read or refused with reasons, never thrown.</summary>
public sealed class FuzzTests
{
    private static readonly string[] Pieces =
    [
        "{", "}", "[", "]", ",", ":", "\"", "\\", "\\u0000", "\\ud800", "\\udc00\\ud800", "null", "true", "-", "1e999", "-1e999", "1e-999", "0.1",
        "99999999999999999999999999999999999", "\"\"", "//", "/*", "\uFEFF", "\u2028", "9999-12-31T23:59:59-18:00", "0000-01-01", "-0001-01-01", "'",
        "\n", "\0", "id", "2027-03-28T01:30", ", 3 h, after ", "FREQ=YEARLY", "]]]]]", "{\"a\":", "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[",
    ];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 40)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Read_ADamagedFile_NeverThrows(int seed)
    {
        var random = new Random(seed);
        for (var i = 0; i < 100; i++)
        {
            var read = WorkshopFile.Read(Damage(Samples.Whole, random));

            Assert.NotEqual(read.IsRead, read.Reasons.Count > 0);
            Assert.All(read.Reasons, reason => Assert.True(reason.Says.Length is > 0 and < 2_000 && reason.Where.StartsWith('$')));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Read_ADamagedValue_NeverThrows(int seed)
    {
        var random = new Random(seed);
        var text = Encoding.UTF8.GetString(Samples.Whole);
        for (var i = 0; i < 100; i++)
        {
            var starts = Enumerable.Range(0, text.Length - 1).Where(at => text[at] == '"').ToList();
            var at = starts[random.Next(starts.Count)] + 1;
            var piece = Pieces[random.Next(Pieces.Length)];

            var read = WorkshopFile.Read(Bytes.Of(text[..at] + piece + text[(at + random.Next(2))..]));

            Assert.NotEqual(read.IsRead, read.Reasons.Count > 0);
        }
    }

    private static byte[] Damage(byte[] file, Random random)
    {
        var bytes = file.ToList();
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            var at = random.Next(bytes.Count);
            switch (random.Next(5))
            {
                case 0:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 1:
                    bytes.RemoveRange(at, Math.Min(random.Next(1, 30), bytes.Count - at));
                    break;
                case 2:
                    bytes.InsertRange(at, Bytes.Of(Pieces[random.Next(Pieces.Length)]));
                    break;
                case 3:
                    bytes.InsertRange(at, bytes.Slice(random.Next(bytes.Count / 2), random.Next(1, 200)));
                    break;
                default:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
            }
        }

        return [.. random.Next(10) == 0 ? bytes.Take(random.Next(bytes.Count)) : bytes];
    }
}
