using System.Globalization;

namespace EpisodePlanner.Web.Tests.Pictures;

/// <summary>A colour by its linear red, green and blue, each 0 to 1, and what published formulas say about it.</summary>
internal readonly record struct Colour(double Red, double Green, double Blue)
{
    /// <summary>How colours look to people who see them differently, by Machado, Oliveira and Fernandes 2009, severity 1.</summary>
    public static IReadOnlyDictionary<string, double[]> Sights { get; } = new Dictionary<string, double[]>
    {
        ["most people"] = [1, 0, 0, 0, 1, 0, 0, 0, 1],
        ["protanopia"] = [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
        ["deuteranopia"] = [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881],
        ["tritanopia"] = [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900],
    };

    /// <summary>The colour of "#rrggbb" (sRGB, IEC 61966-2-1).</summary>
    public static Colour Of(string hex)
    {
        double Channel(int at)
        {
            var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return new Colour(Channel(1), Channel(3), Channel(5));
    }

    /// <summary>Relative luminance, WCAG 2.2.</summary>
    public double Luminance => (0.2126 * Red) + (0.7152 * Green) + (0.0722 * Blue);

    /// <summary>Contrast ratio, WCAG 2.2: 1 to 21.</summary>
    public static double Contrast(Colour one, Colour other)
    {
        var (a, b) = (one.Luminance, other.Luminance);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>The colour as a sight shows it.</summary>
    public Colour SeenBy(double[] m) => new(
        Clamp((m[0] * Red) + (m[1] * Green) + (m[2] * Blue)),
        Clamp((m[3] * Red) + (m[4] * Green) + (m[5] * Blue)),
        Clamp((m[6] * Red) + (m[7] * Green) + (m[8] * Blue)));

    /// <summary>CIELAB under D65.</summary>
    public (double L, double A, double B) Lab()
    {
        static double F(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : ((24389.0 / 27 * t) + 16) / 116;
        var x = F(((0.4124564 * Red) + (0.3575761 * Green) + (0.1804375 * Blue)) / 0.95047);
        var y = F((0.2126729 * Red) + (0.7151522 * Green) + (0.0721750 * Blue));
        var z = F(((0.0193339 * Red) + (0.1191920 * Green) + (0.9503041 * Blue)) / 1.08883);
        return ((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double Clamp(double value) => Math.Clamp(value, 0, 1);
}

/// <summary>The colour difference CIEDE2000, after Sharma, Wu and Dalal 2005.</summary>
internal static class Ciede2000
{
    public static double Between((double L, double A, double B) one, (double L, double A, double B) other)
    {
        var c7 = Math.Pow((Chroma(one.A, one.B) + Chroma(other.A, other.B)) / 2, 7);
        var g = 0.5 * (1 - Math.Sqrt(c7 / (c7 + Pow25)));
        var (a1, a2) = ((1 + g) * one.A, (1 + g) * other.A);
        var (c1, c2) = (Chroma(a1, one.B), Chroma(a2, other.B));
        var (h1, h2) = (Hue(a1, one.B), Hue(a2, other.B));
        var dh = c1 * c2 == 0 ? 0 : Wrap(h2 - h1);
        var (dl, dc, dH) = (other.L - one.L, c2 - c1, 2 * Math.Sqrt(c1 * c2) * Sin(dh / 2));
        return Combine(((one.L + other.L) / 2, (c1 + c2) / 2, MeanHue(h1, h2, c1 * c2)), dl, dc, dH);
    }

    private static double Combine((double L, double C, double H) mean, double dl, double dc, double dh)
    {
        var t = 1 - (0.17 * Cos(mean.H - 30)) + (0.24 * Cos(2 * mean.H)) + (0.32 * Cos((3 * mean.H) + 6)) - (0.20 * Cos((4 * mean.H) - 63));
        var l50 = (mean.L - 50) * (mean.L - 50);
        var sl = 1 + (0.015 * l50 / Math.Sqrt(20 + l50));
        var sc = 1 + (0.045 * mean.C);
        var sh = 1 + (0.015 * mean.C * t);
        var c7 = Math.Pow(mean.C, 7);
        var theta = 30 * Math.Exp(-Math.Pow((mean.H - 275) / 25, 2));
        var rt = -Sin(2 * theta) * 2 * Math.Sqrt(c7 / (c7 + Pow25));
        return Math.Sqrt(Square(dl / sl) + Square(dc / sc) + Square(dh / sh) + (rt * (dc / sc) * (dh / sh)));
    }

    private const double Pow25 = 6103515625;

    private static double Chroma(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static double Hue(double a, double b) => a == 0 && b == 0 ? 0 : (Math.Atan2(b, a) * 180 / Math.PI + 360) % 360;

    private static double Wrap(double angle) => angle > 180 ? angle - 360 : angle < -180 ? angle + 360 : angle;

    private static double MeanHue(double h1, double h2, double chroma) => chroma == 0 ? h1 + h2
        : Math.Abs(h1 - h2) <= 180 ? (h1 + h2) / 2
        : h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);

    private static double Square(double value) => value * value;
}
