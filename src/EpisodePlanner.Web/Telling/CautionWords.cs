using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Cautions in words, with their source and what they give way to.</summary>
internal static class CautionWords
{
    public static string Of(Caution caution) =>
        $"Caution, {char.ToLowerInvariant(caution.Topic[0])}{caution.Topic[1..]}: {caution.Text} {caution.Defers} (Source: {caution.Source}.)";
}
