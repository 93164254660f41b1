using System.Text;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class SyntaxTests
{
    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("  \n ", "Line 2, column 2: the file holds nothing but blanks.")]
    [InlineData("[]", "This is an array; an object in { } would be right.")]
    [InlineData("7", "This is a number; an object in { } would be right.")]
    [InlineData("{", "Line 1, column 2: the file ends too early")]
    [InlineData("{\n  \"a\": \"b", "the file ends too early")]
    [InlineData("{\n  \"a\": 1,\n}", "Line 3, column 1: a comma stands before the closing bracket; take it out.")]
    [InlineData("{ \"a\": [1, ] }", "Line 1, column 12: a comma stands before the closing bracket")]
    [InlineData("{ // no\n \"a\": 1 }", "Line 1, column 3: JSON has no comments")]
    [InlineData("{ \"a\": 1 /* no */ }", "Line 1, column 10: JSON has no comments")]
    [InlineData("{ \"a\": 1\n  \"b\": 2 }", "Line 2, column 3: something is missing before this; most likely a comma.")]
    [InlineData("{ 'a': 1 }", "Line 1, column 3: texts and names stand in double quotes")]
    [InlineData("{ a: 1 }", "Line 1, column 3: this can't stand here; texts and names need double quotes")]
    [InlineData("{ \"a\": yes }", "Line 1, column 8: this can't stand here; texts and names need double quotes")]
    [InlineData("{ \"a\": 012 }", "this is no number of JSON")]
    [InlineData("{ \"a\": .5 }", "Line 1, column 8: this is no number of JSON")]
    [InlineData("{ \"ä\": \"b\nc\" }", "Line 1, column 10: a text must end on its line")]
    [InlineData("{ \"a\": \"\\x\" }", "after a backslash")]
    [InlineData("{} {}", "Line 1, column 4: ")]
    [InlineData("{ \"a\" 1 }", "Line 1, column 7: ")]
    public void Read_BrokenGrammar_IsToldWithLineAndColumn(string text, string says)
    {
        var reason = Assert.Single(Bytes.Reasons(text));

        Assert.Equal("$", reason.Where);
        Assert.Contains(says, reason.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AByteOrderMark_IsWrongEncoding() =>
        Assert.Equal(
            "Wrong encoding: the file begins with a byte order mark; save it as UTF-8 without one.",
            Says([0xEF, 0xBB, 0xBF, .. Samples.Whole]));

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-32")]
    public void Read_AnotherUnicodeEncoding_IsWrongEncoding(string name)
    {
        var encoding = Encoding.GetEncoding(name);
        var text = Encoding.UTF8.GetString(Samples.Whole);

        Assert.Equal("Wrong encoding: the file is UTF-16 or UTF-32; save it as UTF-8.", Says(encoding.GetBytes(text)));
        Assert.Equal(
            "Wrong encoding: the file is UTF-16 or UTF-32; save it as UTF-8.", Says([.. encoding.GetPreamble(), .. encoding.GetBytes(text)]));
    }

    [Fact]
    public void Read_Latin1_IsWrongEncodingWithItsPlace() =>
        Assert.Equal(
            "Wrong encoding: Line 2, column 13: the byte 0xFC is not UTF-8; save the file as UTF-8.",
            Says(Encoding.Latin1.GetBytes("{\n  \"name\": \"Süd\" }")));

    [Fact]
    public void Read_NestedDeeperThan32_IsTold()
    {
        var says = Says(Bytes.Of(string.Concat(Enumerable.Repeat("[", 33))));

        Assert.Equal("Line 1, column 33: objects and arrays are nested deeper than 32; a workshop needs no more than 10.", says);
    }

    [Fact]
    public void Read_AMillionBrackets_IsTold() => Assert.Contains("nested deeper", Says(Bytes.Of(new string('[', 1_000_000))), StringComparison.Ordinal);

    [Fact]
    public void Read_MoreThanTenMegabytes_IsTold() =>
        Assert.Equal(
            "The file has 10,485,761 bytes; at most 10,485,760 are read.",
            Says([.. Samples.Whole, .. Enumerable.Repeat((byte)' ', WorkshopFile.MaximumBytes + 1 - Samples.Whole.Length)]));

    [Fact]
    public void Read_TenMegabytesOfTasks_AreRead()
    {
        var text = new StringBuilder("""{ "format": 1, "name": "Shed", "zone": "Europe/Dublin", "series": [ { "name": "Walker" } ], "tasks": [""");
        var count = 0;
        while (text.Length < WorkshopFile.MaximumBytes - 500)
        {
            text.Append(count == 0 ? "\n" : ",\n").Append(FormattableString.Invariant(
                $$"""{ "name": "weld {{count++}}", "kind": "weld", "series": "walker", "stages": [ { "hours": 1.25, "needs": [] } ], "note": "" }"""));
        }

        var read = WorkshopFile.Read(Bytes.Of(text.Append("] }").ToString()));

        Assert.Empty(read.Reasons);
        Assert.Equal(count, read.Thing!.Tasks.Count);
    }

    private static string Says(byte[] bytes) => Assert.Single(WorkshopFile.Read(bytes).Reasons).Says;
}
