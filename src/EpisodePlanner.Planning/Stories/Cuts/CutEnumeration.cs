namespace EpisodePlanner.Planning;

/// <summary>Lists the cuts that a line allows.</summary>
internal static class CutEnumeration
{
    /// <summary>All cuts that a line allows; null where they are more than a limit.</summary>
    public static IReadOnlyList<StoryCuts>? Of(StoryLine line, int limit)
    {
        var found = new List<StoryCuts>();
        return Add(line, 0, 0, new bool[line.Units.Count], found, limit) ? found : null;
    }

    /// <summary>Every way to choose one of each; null where they are more than a limit.</summary>
    public static IEnumerable<ValueList<StoryCuts>>? OfAll(IReadOnlyList<StoryLine> lines, int limit)
    {
        var (choices, ways) = (new List<IReadOnlyList<StoryCuts>>(), 1L);
        foreach (var line in lines)
        {
            if (Of(line, limit) is not { } own || (ways *= Math.Max(1, own.Count)) > limit)
            {
                return null;
            }

            choices.Add(own.Count > 0 ? own : [line.Now]);
        }

        return choices.Aggregate(
            (IEnumerable<ValueList<StoryCuts>>)[[]],
            (ways, next) => ways.SelectMany(way => next.Select(cuts => way.Append(cuts).ToValueList())));
    }

    private static bool Add(StoryLine line, int first, long misfit, bool[] ends, List<StoryCuts> found, int limit)
    {
        if (first == line.Units.Count)
        {
            found.Add(new StoryCuts([.. ends]));
            return found.Count <= limit;
        }

        for (var last = first; last < line.Units.Count; last++)
        {
            var with = misfit + line.Misfit(first, last);
            if (!line.IsEpisode(first, last) || with + line.LeastMisfitFrom(last + 1) > line.LeastMisfit)
            {
                continue;
            }

            ends[last] = true;
            var goesOn = Add(line, last + 1, with, ends, found, limit);
            ends[last] = false;
            if (!goesOn)
            {
                return false;
            }
        }

        return true;
    }
}
