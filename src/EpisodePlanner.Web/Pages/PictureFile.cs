using System.Text;
using EpisodePlanner.Web.Pictures;

namespace EpisodePlanner.Web.Pages;

/// <summary>Gives a picture as a file of its own, for a video or a letter.</summary>
internal static class PictureFile
{
    private const int Pixels = 1_920;

    /// <summary>The picture as SVG or PNG; nothing for other endings.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="ending">The ending of the file's name: svg or png.</param>
    /// <param name="theme">dark, or anything else for light.</param>
    /// <param name="name">The file's name without its ending.</param>
    public static IResult Of(Picture picture, string ending, string? theme, string name)
    {
        var inks = theme == "dark" ? PictureTheme.Dark : PictureTheme.Light;
        return ending switch
        {
            "svg" => Results.File(Encoding.UTF8.GetBytes(picture.Standalone(inks, Pixels)), "image/svg+xml", $"{name}.svg"),
            "png" => Png(picture, inks, name),
            _ => Results.NotFound(),
        };
    }

    private static IResult Png(Picture picture, PictureTheme inks, string name)
    {
        var png = PictureImage.Draw(picture, inks, out var problem);
        return png is null
            ? Results.Text($"{problem} The SVG can be had all the same.", statusCode: StatusCodes.Status501NotImplemented)
            : Results.File(png, "image/png", $"{name}.png");
    }
}
