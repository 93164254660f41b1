using System.Text;

namespace EpisodePlanner.Planning.Files.Text;

/// <summary>Makes short names for ids out of names for people.</summary>
internal static class Slug
{
    private const int Longest = 48;

    private static readonly string[] Foreign =
    [
        "aàáâãåāăą", "cçćč", "dďđð", "eèéêëēęě", "gğ", "iìíîïīı", "lłľ", "nñńň", "oòóôõøōő", "rřŕ", "sśšşș",
        "tťțţ", "uùúûūůű", "yýÿ", "zźżž",
    ];

    private static readonly Dictionary<char, string> Plain = MakePlain();

    /// <summary>Lower-case letters, digits and single dashes; empty where the text has no letter or digit it knows.</summary>
    public static string Of(string text)
    {
        var slug = new StringBuilder();
        foreach (var c in text.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                slug.Append(c);
            }
            else if (Plain.TryGetValue(c, out var plain))
            {
                slug.Append(plain);
            }
            else if (slug.Length > 0 && slug[^1] != '-' && c is not ('\'' or '’'))
            {
                slug.Append('-');
            }
        }

        return Cut(slug.ToString());
    }

    private static string Cut(string slug)
    {
        if (slug.Length > Longest)
        {
            var dash = slug.LastIndexOf('-', Longest);
            slug = slug[..(dash > 0 ? dash : Longest)];
        }

        return slug.Trim('-');
    }

    private static Dictionary<char, string> MakePlain()
    {
        var plain = new Dictionary<char, string>
        {
            ['ä'] = "ae",
            ['ö'] = "oe",
            ['ü'] = "ue",
            ['ß'] = "ss",
            ['æ'] = "ae",
            ['œ'] = "oe",
        };
        foreach (var letters in Foreign)
        {
            foreach (var letter in letters[1..])
            {
                plain[letter] = letters[..1];
            }
        }

        return plain;
    }
}
