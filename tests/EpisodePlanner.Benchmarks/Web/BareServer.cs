using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;

namespace EpisodePlanner.Benchmarks.Web;

/// <summary>A server that does nothing but send some bytes.</summary>
internal sealed class BareServer : IAsyncDisposable
{
    private readonly WebApplication app;

    private BareServer(WebApplication app)
    {
        this.app = app;
        Client = new HttpClient(new SocketsHttpHandler { UseProxy = false }) { BaseAddress = new Uri(app.Urls.Single()) };
    }

    public HttpClient Client { get; }

    public static async Task<BareServer> Start(byte[] bytes)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().UseUrls("http://127.0.0.1:0");
        var app = builder.Build();
        app.Run(context =>
        {
            context.Response.ContentType = "application/json";
            context.Response.ContentLength = bytes.Length;
            return context.Response.Body.WriteAsync(bytes).AsTask();
        });
        await app.StartAsync();
        return new BareServer(app);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await app.DisposeAsync();
    }
}
