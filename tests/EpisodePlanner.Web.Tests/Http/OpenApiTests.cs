using EpisodePlanner.Data;
using EpisodePlanner.Web.Features;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace EpisodePlanner.Web.Tests.Http;

public sealed class OpenApiTests
{
    [Fact]
    public async Task Document()
    {
        var builder = WebApplication.CreateBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddSingleton<TimeProvider>(new SetClock()).AddSingleton<WorkshopStore>().AddSingleton<SupposeStore>().AddApi();
        await using var app = builder.Build();
        app.UseDeveloperExceptionPage();
        app.MapApi();
        await app.StartAsync(TestContext.Current.CancellationToken);
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        var r = await client.GetAsync("/openapi/v1.json", TestContext.Current.CancellationToken);
        var text = await r.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync("/tmp/openapi.json", text, TestContext.Current.CancellationToken);
        var page = await client.GetStringAsync("/reference", TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync("/tmp/reference.html", page, TestContext.Current.CancellationToken);
        Assert.True(r.IsSuccessStatusCode, text);
    }
}
