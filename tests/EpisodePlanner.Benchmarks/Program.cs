using EpisodePlanner.Benchmarks;
using EpisodePlanner.Benchmarks.Pages;
using EpisodePlanner.Benchmarks.Psplib;
using EpisodePlanner.Benchmarks.Remedies;
using EpisodePlanner.Benchmarks.Scale;
using EpisodePlanner.Benchmarks.Storing;
using EpisodePlanner.Benchmarks.Story;
using EpisodePlanner.Benchmarks.Trials;
using EpisodePlanner.Benchmarks.Web;

IReadOnlyList<IBenchmark> entries =
[
    new ScaleBenchmark(),
    new StoryBenchmark(),
    new RemediesBenchmark(),
    new PsplibBenchmark(),
    new DecodeBenchmark(),
    new VersusBenchmark(),
    new DataBenchmark(),
    new KillBenchmark(),
    new EditorsBenchmark(),
    new FuzzBenchmark(),
    new WebBenchmark(),
    new PagesBenchmark(),
    new PicturesBenchmark(),
];

if (args.Length == 0 || entries.FirstOrDefault(entry => entry.Name == args[0]) is not { } chosen)
{
    return Refuse(args.Length == 0 ? "Which entry?" : $"There is no entry '{args[0]}'.");
}

try
{
    return chosen.Run(new Options(args[1..]), Console.Out);
}
catch (UsageException problem)
{
    return Refuse(problem.Message);
}

int Refuse(string problem)
{
    Console.Error.WriteLine(problem);
    Console.Error.WriteLine();
    Console.Error.WriteLine("dotnet run -c Release --project tests/EpisodePlanner.Benchmarks -- ENTRY [OPTIONS]");
    foreach (var entry in entries)
    {
        Console.Error.WriteLine($"  {entry.Usage}");
    }

    return 2;
}
