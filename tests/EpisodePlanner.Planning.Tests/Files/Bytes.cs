using System.Text;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>Reads texts as files.</summary>
internal static class Bytes
{
    public static byte[] Of(string text) => Encoding.UTF8.GetBytes(text);

    public static Workshop Whole(string text)
    {
        var read = WorkshopFile.Read(Of(text));
        Assert.Empty(read.Reasons);
        return read.Thing!;
    }

    public static ValueList<Reason> Reasons(string text)
    {
        var read = WorkshopFile.Read(Of(text));
        Assert.False(read.IsRead);
        return read.Reasons;
    }
}
