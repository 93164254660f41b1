using System.Xml.Linq;

namespace EpisodePlanner.Web.Pictures;

/// <summary>A drawing as SVG, made by a pure function. Its classes take their colours from <see cref="PictureStyle"/>.</summary>
/// <param name="Title">What it shows, for people who can't see it.</param>
/// <param name="Description">What can be read from it, in a sentence or two.</param>
/// <param name="Width">Its width in units of the drawing.</param>
/// <param name="Height">Its height in the same units.</param>
/// <param name="Root">The svg element; not to be changed.</param>
public sealed record Picture(string Title, string Description, int Width, int Height, XElement Root)
{
    /// <summary>The markup to stand in a page, whose stylesheet gives the colours.</summary>
    public string Inline() => Root.ToString(SaveOptions.DisableFormatting);

    /// <summary>A file of its own, with its colours inside, at a width in pixels.</summary>
    /// <param name="theme">Light or dark.</param>
    /// <param name="pixels">The width in pixels; the height follows.</param>
    public string Standalone(PictureTheme theme, int pixels)
    {
        var root = new XElement(Root);
        root.SetAttributeValue("width", pixels);
        root.SetAttributeValue("height", (int)Math.Ceiling((double)pixels * Height / Width));
        root.AddFirst(
            new XElement(root.Name.Namespace + "style", PictureStyle.Of(theme)),
            new XElement(
                root.Name.Namespace + "rect",
                new XAttribute("width", Width),
                new XAttribute("height", Height),
                new XAttribute("class", "p-paper")));
        return root.ToString(SaveOptions.DisableFormatting);
    }
}

/// <summary>Which inks a picture is drawn in.</summary>
public enum PictureTheme
{
    /// <summary>Dark ink on light paper.</summary>
    Light,

    /// <summary>Light ink on dark paper.</summary>
    Dark,
}
