using SkiaSharp;
using Svg.Skia;

namespace EpisodePlanner.Web.Pictures;

/// <summary>Draws pictures as PNG of 1920 × 1080, the size of a video.</summary>
public static class PictureImage
{
    private const int Width = 1_920;
    private const int Height = 1_080;
    private const int Margin = 40;

    /// <summary>A picture in the middle of a sheet of its theme; null, with a sentence why, where it can't be drawn.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="theme">Light or dark.</param>
    /// <param name="problem">Why not.</param>
    public static byte[]? Draw(Picture picture, PictureTheme theme, out string problem)
    {
        problem = "";
        if (Typefaces.Value is not { } typefaces)
        {
            problem = "A PNG needs a type to write with, and this machine has none that is known: install DejaVu Sans or Noto Sans.";
            return null;
        }

        using var svg = new SKSvg();
        svg.Settings.TypefaceProviders!.Insert(0, typefaces);
        return svg.FromSvg(picture.Standalone(theme, Width)) is { } drawing ? Paint(drawing, theme) : null;
    }

    private static readonly Lazy<FileTypefaces?> Typefaces = new(FileTypefaces.Find);

    private static byte[] Paint(SKPicture drawing, PictureTheme theme)
    {
        using var surface = SKSurface.Create(new SKImageInfo(Width, Height));
        var canvas = surface.Canvas;
        canvas.Clear(SKColor.Parse(Ink.Of(theme).Sheet));
        var size = drawing.CullRect;
        var scale = Math.Min((Width - (2 * Margin)) / size.Width, (Height - (2 * Margin)) / size.Height);
        canvas.Translate((Width - (size.Width * scale)) / 2, (Height - (size.Height * scale)) / 2);
        canvas.Scale(scale);
        canvas.DrawPicture(drawing);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
