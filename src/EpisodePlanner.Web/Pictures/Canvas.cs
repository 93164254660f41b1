using System.Globalization;
using System.Xml.Linq;

namespace EpisodePlanner.Web.Pictures;

/// <summary>Puts shapes and words on a drawing; everything is told by classes, nothing by colour.</summary>
internal sealed class Canvas
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly XElement root;
    private readonly string name;

    /// <summary>An empty drawing.</summary>
    /// <param name="name">Makes the ids inside it differ from those of other drawings on a page.</param>
    /// <param name="width">Its width.</param>
    public Canvas(string name, int width)
    {
        (this.name, Width) = (name, width);
        root = new XElement(Svg + "svg", Hatch("run", 45), Hatch("planned", -45));
    }

    /// <summary>The width in units of the drawing.</summary>
    public int Width { get; }

    /// <summary>A rectangle; with words that are told when it is pointed at, and a link where there is somewhere to go.</summary>
    public void Rect(double x, double y, double width, double height, string style, string? tells = null, string? link = null) =>
        Add(tells, link, new XElement(
            Svg + "rect", At("x", x), At("y", y), At("width", Math.Max(0.5, width)), At("height", height), Class(style)));

    /// <summary>A rectangle filled with hatching: run or planned.</summary>
    public void Hatched(double x, double y, double width, double height, string hatch, string? tells = null, string? link = null) =>
        Add(tells, link, new XElement(
            Svg + "rect",
            At("x", x),
            At("y", y),
            At("width", Math.Max(0.5, width)),
            At("height", height),
            new XAttribute("fill", $"url(#{name}-{hatch})"),
            Class($"p-hatched p-{hatch}")));

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, string style) => root.Add(new XElement(
        Svg + "line", At("x1", x1), At("y1", y1), At("x2", x2), At("y2", y2), Class(style)));

    /// <summary>A line through points.</summary>
    public void Path(IEnumerable<(double X, double Y)> points, string style)
    {
        var steps = points.Select((point, i) => $"{(i == 0 ? "M" : "L")}{Number(point.X)} {Number(point.Y)}");
        root.Add(new XElement(Svg + "path", new XAttribute("d", string.Concat(steps)), Class(style)));
    }

    /// <summary>A small disc.</summary>
    public void Dot(double x, double y, double radius, string style, string? tells = null, string? link = null) =>
        Add(tells, link, new XElement(Svg + "circle", At("cx", x), At("cy", y), At("r", radius), Class(style)));

    /// <summary>Words from a point on.</summary>
    public void Text(double x, double y, string words, string style) =>
        root.Add(new XElement(Svg + "text", At("x", x), At("y", y), Class(style), words));

    /// <summary>Words if they fit into a width, shortened by an ellipsis where at least a few characters stay; else none.</summary>
    public void TextWithin(double x, double y, double width, string words, string style, double size)
    {
        var most = (int)(width / (size * WidthPerSize));
        if (words.Length <= most)
        {
            Text(x, y, words, style);
        }
        else if (most >= FewestCharacters)
        {
            Text(x, y, words[..(most - 1)].TrimEnd() + "\u2026", style);
        }
    }

    /// <summary>About how wide words stand, in units of the drawing.</summary>
    public static double WidthOf(string words, double size) => words.Length * size * WidthPerSize;

    /// <summary>The finished picture.</summary>
    public Picture Finish(string title, string description, double height)
    {
        var whole = (int)Math.Ceiling(height);
        root.Add(
            new XAttribute("viewBox", $"0 0 {Width} {whole}"),
            new XAttribute("role", "group"),
            new XAttribute("class", "picture"),
            new XAttribute("aria-labelledby", $"{name}-title {name}-desc"));
        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", $"{name}-title"), title),
            new XElement(Svg + "desc", new XAttribute("id", $"{name}-desc"), description));
        return new Picture(title, description, Width, whole, root);
    }

    /// <summary>The mean width of a character of a plain sans-serif type, as a share of its size; from memory.</summary>
    private const double WidthPerSize = 0.54;

    private const int FewestCharacters = 4;

    private void Add(string? tells, string? link, XElement shape)
    {
        if (tells is not null)
        {
            shape.Add(new XElement(Svg + "title", tells));
        }

        root.Add(link is null ? shape : new XElement(Svg + "a", new XAttribute("href", link), shape));
    }

    private XElement Hatch(string hatch, int angle) => new(
        Svg + "pattern",
        new XAttribute("id", $"{name}-{hatch}"),
        new XAttribute("width", 5),
        new XAttribute("height", 5),
        new XAttribute("patternUnits", "userSpaceOnUse"),
        new XAttribute("patternTransform", $"rotate({angle})"),
        new XElement(Svg + "rect", At("width", 2.2), At("height", 5), Class($"p-{hatch}-ink")));

    private static XAttribute At(string attribute, double value) => new(attribute, Number(value));

    private static XAttribute Class(string style) => new("class", style);

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
