using System.Net;
using System.Net.Sockets;
using System.Text;

namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class HealthCommandTests
{
    [Theory]
    [InlineData(HttpStatusCode.OK, 0)]
    [InlineData(HttpStatusCode.ServiceUnavailable, 1)]
    [InlineData(HttpStatusCode.NotFound, 1)]
    public async Task Health_IsWhatTheServerAnswers(HttpStatusCode status, int code)
    {
        using var listener = Listen();
        var asked = Serve(listener, status);

        var answer = await Shell.Run("health", "--url", $"http://{listener.LocalEndpoint}");

        Assert.Equal(code, answer.Code);
        Assert.StartsWith("GET /health/ready HTTP/1.1", await asked, StringComparison.Ordinal);
        Assert.NotEmpty(code == 0 ? answer.Output : answer.Error);
    }

    [Fact]
    public async Task Health_WhereNothingListens_SaysSo()
    {
        var listener = Listen();
        var at = listener.LocalEndpoint;
        listener.Dispose();

        var answer = await Shell.Run("health", "--url", $"http://{at}");

        Assert.Equal((1, $"Nothing answers at {at}.\n"), (answer.Code, answer.Error));
    }

    [Theory]
    [InlineData("5080")]
    [InlineData("file:///etc/passwd")]
    public async Task Health_OfNoAddress_IsBadInput(string url)
    {
        var answer = await Shell.Run("health", "--url", url);

        Assert.Equal(2, answer.Code);
        Assert.Contains("http://127.0.0.1:5080", answer.Error, StringComparison.Ordinal);
    }

    private static TcpListener Listen()
    {
        var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return listener;
    }

    /// <summary>Answers one request and hands back its head.</summary>
    private static async Task<string> Serve(TcpListener listener, HttpStatusCode status)
    {
        var stop = TestContext.Current.CancellationToken;
        using var client = await listener.AcceptTcpClientAsync(stop);
        await using var stream = client.GetStream();
        var head = new byte[4096];
        var length = await stream.ReadAsync(head, stop);
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"HTTP/1.1 {(int)status} -\r\nContent-Length: 0\r\n\r\n"), stop);
        return Encoding.ASCII.GetString(head, 0, length);
    }
}
