using System.Diagnostics;
using System.Globalization;
using AngleSharp;
using AngleSharp.Html.Dom;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Web;

namespace EpisodePlanner.Benchmarks.Pages;

/// <summary>Measures the pages of one generated workshop.</summary>
internal sealed class PagesRun(PlannerUnderTest planner)
{
    private const int WarmUps = 8;
    private const int Repeats = 15;
    private const int Paints = 5;
    private const double Late = 0.95;
    private static readonly string[] Own = ["/desk.css", "/desk.js", "/mark.svg"];

    private const string Painted =
        """
        () => new Promise(tell => new PerformanceObserver(list => {
          const paint = list.getEntriesByName('first-contentful-paint')[0];
          if (paint) tell(paint.startTime);
        }).observe({ type: 'paint', buffered: true }))
        """;

    private readonly string desk = planner.Desk;

    /// <summary>Has the plan made and weighed, so that what follows finds it kept.</summary>
    public Task Plan() => planner.Read($"{desk}?wait=true");

    /// <summary>A page asked for again and again, its plan kept: the median, and what 95 of 100 stay below.</summary>
    public async Task<(TimeSpan Median, TimeSpan Late)> Served(string path, int visits)
    {
        var times = new List<TimeSpan>();
        for (var i = -WarmUps; i < visits; i++)
        {
            var begun = Stopwatch.GetTimestamp();
            await planner.Read(desk + path);
            if (i >= 0)
            {
                times.Add(Stopwatch.GetElapsedTime(begun));
            }
        }

        return (Stopwatching.Median(times), times.Order().ElementAt((int)Math.Ceiling(Late * times.Count) - 1));
    }

    /// <summary>What a browser that has kept nothing is sent, in bytes of the compressed bodies: all of it, and the page alone.</summary>
    public async Task<(long All, long Page)> FirstVisit(string path)
    {
        var page = await Sent(desk + path);
        return (page + await OwnFiles(), page);
    }

    /// <summary>What every page brings along.</summary>
    public async Task<long> OwnFiles()
    {
        var sizes = await Task.WhenAll(Own.Select(Sent));
        return sizes.Sum();
    }

    /// <summary>When something of the page is seen first, by the browser's own account (W3C Paint Timing); the median.</summary>
    public async Task<TimeSpan> FirstPaint(Chrome chrome, string path)
    {
        var times = new List<TimeSpan>();
        for (var i = 0; i < Paints; i++)
        {
            var page = await chrome.Page();
            await page.GotoAsync(new Uri(planner.Client.BaseAddress!, desk + path).ToString());
            times.Add(TimeSpan.FromMilliseconds(await page.EvaluateAsync<double>(Painted)));
            await page.Context.CloseAsync();
        }

        return Stopwatching.Median(times);
    }

    /// <summary>A task's form is sent with other hours, and a page is read: until it is saved, and until the page is there.</summary>
    /// <param name="next">The page that shows the new plan.</param>
    public async Task<(TimeSpan Saved, TimeSpan Shown)> ChangedTask(string next)
    {
        var (saved, shown) = (new List<TimeSpan>(), new List<TimeSpan>());
        for (var i = 0; i < Repeats; i++)
        {
            using var form = await Filled(string.Create(CultureInfo.InvariantCulture, $"{1 + (i / 10m)}"));
            var begun = Stopwatch.GetTimestamp();
            using var answer = await planner.Client.SendAsync(form);
            saved.Add(Stopwatch.GetElapsedTime(begun));
            if ((int)answer.StatusCode != 302)
            {
                throw new InvalidOperationException($"The form answered {(int)answer.StatusCode}.");
            }

            await planner.Read(desk + next);
            shown.Add(Stopwatch.GetElapsedTime(begun));
        }

        return (Stopwatching.Median(saved), Stopwatching.Median(shown));
    }

    /// <summary>The form of a task as a browser would send it, with other hours typed into it.</summary>
    private async Task<HttpRequestMessage> Filled(string hours)
    {
        using var answer = await planner.Send(HttpMethod.Get, desk + DeskPages.Task);
        var html = await answer.Content.ReadAsStringAsync();
        using var context = BrowsingContext.New(Configuration.Default);
        using var document = await context.OpenAsync(made => made.Address(planner.Client.BaseAddress + desk[1..]).Content(html));
        var form = (IHtmlFormElement)document.QuerySelector("form.thing")!;
        ((IHtmlInputElement)form.QuerySelector("[name='stages[0].hours']")!).Value = hours;
        var sent = form.GetSubmission((IHtmlElement)form.QuerySelector("button.main")!)!;
        var request = new HttpRequestMessage(HttpMethod.Post, sent.Target.Href) { Content = new StreamContent(sent.Body) };
        request.Content.Headers.TryAddWithoutValidation("Content-Type", sent.Headers["Content-Type"]);
        return request;
    }

    private async Task<long> Sent(string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.TryAddWithoutValidation("Accept-Encoding", "gzip, deflate, br, zstd");
        using var answer = await planner.Client.SendAsync(request);
        answer.EnsureSuccessStatusCode();
        return (await answer.Content.ReadAsByteArrayAsync()).LongLength;
    }
}
