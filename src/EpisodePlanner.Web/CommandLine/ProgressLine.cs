using System.Globalization;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>
/// Says on the error output how far work has come once it takes more than a second: one line written over and over on a
/// terminal, a plain line a second elsewhere.
/// </summary>
internal sealed class ProgressLine(Surroundings surroundings)
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Blink = TimeSpan.FromMilliseconds(100);
    private readonly long began = surroundings.Clock.GetTimestamp();
    private TimeSpan said;
    private int width;

    /// <summary>The progress of one piece of the work.</summary>
    public IProgress<double> Of(string what) => new Piece(this, what);

    /// <summary>Leaves a clean line behind.</summary>
    public void End()
    {
        if (width > 0)
        {
            surroundings.Error.Write($"\r{new string(' ', width)}\r");
            width = 0;
        }
    }

    private void Say(string what, double share)
    {
        var gone = surroundings.Clock.GetElapsedTime(began);
        if (share >= 1 || gone < Second || gone - said < (surroundings.ErrorIsTerminal ? Blink : Second))
        {
            return;
        }

        said = gone;
        var percent = (int)Math.Clamp(share * 100, 0, 100);
        Write(string.Create(CultureInfo.InvariantCulture, $"{what}, {percent} % done"));
    }

    private void Write(string line)
    {
        if (!surroundings.ErrorIsTerminal)
        {
            surroundings.Error.WriteLine(line);
            return;
        }

        surroundings.Error.Write($"\r{line.PadRight(width)}");
        width = Math.Max(width, line.Length);
    }

    private sealed class Piece(ProgressLine line, string what) : IProgress<double>
    {
        public void Report(double value) => line.Say(what, value);
    }
}
