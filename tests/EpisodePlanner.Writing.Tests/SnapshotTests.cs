using System.Runtime.CompilerServices;

namespace EpisodePlanner.Writing.Tests;

/// <summary>One outline and one letter, kept as files to be read; EPISODEPLANNER_UPDATE=1 writes them anew.</summary>
public sealed class SnapshotTests
{
    [Fact]
    public void Outline_OfTheSample_ReadsAsKept() =>
        AssertAsKept("outline.md", Assert.IsType<Written>(Outline.Write(SamplePlan.Build(), SamplePlan.Brakes)).Markdown);

    [Fact]
    public void Letter_OfTheSample_ReadsAsKept() => AssertAsKept("letter.md", Letter.Write(SamplePlan.Build()).Markdown);

    private static void AssertAsKept(string name, string markdown)
    {
        var path = Path.Combine(Folder(), "Snapshots", name);
        if (Environment.GetEnvironmentVariable("EPISODEPLANNER_UPDATE") == "1")
        {
            File.WriteAllText(path, markdown);
        }

        Assert.Equal(File.ReadAllText(path), markdown);
    }

    private static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
