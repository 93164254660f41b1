using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace EpisodePlanner.Web.Pictures;

/// <summary>Gives the regular and the bold type of files on this machine for whatever family is asked for.</summary>
internal sealed class FileTypefaces : ITypefaceProvider
{
    private static readonly string[] Folders =
    [
        "/usr/share/fonts", "/usr/local/share/fonts", "/Library/Fonts", "/System/Library/Fonts/Supplemental", "C:\\Windows\\Fonts",
    ];

    /// <summary>Common sans-serif types with both weights, the widest-spread first.</summary>
    private static readonly (string Regular, string Bold)[] Files =
    [
        ("NotoSans-Regular.ttf", "NotoSans-Bold.ttf"),
        ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf"),
        ("LiberationSans-Regular.ttf", "LiberationSans-Bold.ttf"),
        ("Arial.ttf", "Arial Bold.ttf"),
        ("arial.ttf", "arialbd.ttf"),
    ];

    private readonly SKTypeface regular;
    private readonly SKTypeface bold;

    private FileTypefaces(SKTypeface regular, SKTypeface bold) => (this.regular, this.bold) = (regular, bold);

    /// <summary>The types of this machine; null where none of the known ones is there.</summary>
    public static FileTypefaces? Find()
    {
        foreach (var (regular, bold) in Files)
        {
            if (Load(regular) is { } plain && Load(bold) is { } heavy)
            {
                return new FileTypefaces(plain, heavy);
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public SKTypeface FromFamilyName(
        string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle) =>
        fontWeight >= SKFontStyleWeight.SemiBold ? bold : regular;

    private static SKTypeface? Load(string file) => Folders
        .Where(Directory.Exists)
        .SelectMany(folder => Directory.EnumerateFiles(folder, file, new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true }))
        .Select(SKTypeface.FromFile)
        .FirstOrDefault(typeface => typeface is not null);
}
