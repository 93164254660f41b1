using System.Diagnostics;
using System.Net;

namespace EpisodePlanner.Benchmarks.Web;

/// <summary>Asks for one address as often as it can, over a few connections at once.</summary>
internal static class Load
{
    /// <summary>Answers per second.</summary>
    /// <param name="client">Asks.</param>
    /// <param name="request">Makes a request.</param>
    /// <param name="wanted">The status that every answer must have.</param>
    /// <param name="connections">How many ask at once.</param>
    /// <param name="length">How long.</param>
    public static async Task<double> Measure(
        HttpClient client, Func<HttpRequestMessage> request, HttpStatusCode wanted, int connections, TimeSpan length)
    {
        var begun = Stopwatch.GetTimestamp();
        var counts = await Task.WhenAll(Enumerable.Range(0, connections).Select(_ => Task.Run(() => Ask(begun))));
        return counts.Sum() / Stopwatch.GetElapsedTime(begun).TotalSeconds;

        async Task<int> Ask(long since)
        {
            var (count, buffer) = (0, new byte[64 * 1_024]);
            for (; Stopwatch.GetElapsedTime(since) < length; count++)
            {
                using var one = request();
                using var answer = await client.SendAsync(one, HttpCompletionOption.ResponseHeadersRead);
                if (answer.StatusCode != wanted)
                {
                    throw new InvalidOperationException($"{one.RequestUri} answered {(int)answer.StatusCode}.");
                }

                await using var body = await answer.Content.ReadAsStreamAsync();
                while (await body.ReadAsync(buffer) > 0)
                {
                }
            }

            return count;
        }
    }
}
