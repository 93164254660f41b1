using System.Diagnostics;

namespace EpisodePlanner.Trials.Apps;

/// <summary>The end of what a process wrote, for the message where something goes wrong.</summary>
internal sealed class LastWords
{
    private const int Most = 200;
    private readonly Queue<string> lines = new();

    private LastWords()
    {
    }

    /// <summary>Reads on until the process ends, so that it never waits for a reader.</summary>
    public static LastWords Of(Process process)
    {
        var words = new LastWords();
        process.OutputDataReceived += (_, line) => words.Add(line.Data);
        process.ErrorDataReceived += (_, line) => words.Add(line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return words;
    }

    public override string ToString()
    {
        lock (lines)
        {
            return string.Join('\n', lines);
        }
    }

    private void Add(string? line)
    {
        lock (lines)
        {
            if (line is not null)
            {
                lines.Enqueue(line);
            }

            if (lines.Count > Most)
            {
                lines.Dequeue();
            }
        }
    }
}
