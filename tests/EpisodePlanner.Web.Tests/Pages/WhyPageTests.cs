using System.Net;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>The page that tells why. What is expected is our own contract; its facts are held elsewhere.</summary>
public sealed class WhyPageTests
{
    [Fact]
    public async Task Soonest_WhenAsked_SaysWhatNoPlanCanDo()
    {
        await using var visit = await DeskVisit.To(await File.ReadAllBytesAsync(Papers.Demo, TestContext.Current.CancellationToken));

        var asked = (await visit.Read("/why/ferry-e8")).QuerySelector("a[href$='?soonest=true']")!.GetAttribute("href")!;
        var (status, page) = await visit.Get(asked);

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.StartsWith("No plan can publish \u201cA hull to knock on\u201d before ", page.QuerySelector("[role=status]")!.TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Episode_ThatIsNotToCome_IsNotFound()
    {
        await using var visit = await DeskVisit.To(await File.ReadAllBytesAsync(Papers.Demo, TestContext.Current.CancellationToken));

        Assert.Equal(HttpStatusCode.NotFound, (await visit.Get($"/w/{visit.Workshop}/why/nobody")).Status);
    }
}
