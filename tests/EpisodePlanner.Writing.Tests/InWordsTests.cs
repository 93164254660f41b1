namespace EpisodePlanner.Writing.Tests;

/// <summary>Read through the pages, which is where the words stand.</summary>
public sealed class InWordsTests
{
    [Theory]
    [InlineData(45, "45 min by hand")]
    [InlineData(180, "3 h by hand")]
    [InlineData(870, "14 h 30 min by hand")]
    [InlineData(72_000, "1,200 h by hand")]
    public void Work_Minutes_AreHoursAndMinutes(int minutes, string expected)
    {
        var plan = SamplePlan.Build().With(workshop => workshop with
        {
            Log = [workshop.Log.Find(new("l3"))! with { Minutes = minutes }],
        });
        Assert.Contains($"“turn the wheels”: {expected}, finished.", Letter.Write(plan).Markdown, StringComparison.Ordinal);
    }
}
