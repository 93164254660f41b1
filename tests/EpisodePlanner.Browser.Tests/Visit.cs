using Microsoft.Playwright;

namespace EpisodePlanner.Browser.Tests;

/// <summary>One person's browser on a site.</summary>
internal sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly List<string> wrong = [];

    public Visit(Site site, IBrowserContext context, IPage page)
    {
        (Site, this.context, Page) = (site, context, page);
        page.Console += (_, message) =>
        {
            // A refused form answers 4xx on purpose; the browser notes that for itself.
            if (message.Type == "error" && !message.Text.StartsWith("Failed to load resource: the server responded with a status of 4", StringComparison.Ordinal))
            {
                wrong.Add(message.Text);
            }
        };
        page.PageError += (_, error) => wrong.Add(error);
    }

    public Site Site { get; }

    public IPage Page { get; }

    /// <summary>Errors of script and of the console so far.</summary>
    public IReadOnlyList<string> Wrong => wrong;

    /// <summary>Goes to a page of the site.</summary>
    public Task<IResponse?> Open(string path) => Page.GotoAsync(Site.Address + path);

    /// <summary>Goes to a page of the workshop: "/bench".</summary>
    public Task<IResponse?> OpenDesk(string path = "") => Open(Site.Workshop + path);

    public Task<string> Heading() => Page.Locator("h1").InnerTextAsync();

    public Task Press(string button) => Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();

    public Task Follow(string link) => Page.GetByRole(AriaRole.Link, new() { Name = link, Exact = true }).First.ClickAsync();

    public ILocator Field(string name) => Page.Locator($"[name='{name}']:not([type=hidden])");

    public Task Type(string name, string text) => Field(name).FillAsync(text);

    /// <summary>Fills a field by letting the browser set it, where what is typed is too long to be typed.</summary>
    public Task Paste(string name, string text) => Field(name).EvaluateAsync("(field, text) => { field.value = text; }", text);

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
