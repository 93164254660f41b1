using EpisodePlanner.Web.CommandLine;
using EpisodePlanner.Web.Composition;

return await PlannerCommand.Run(args, SystemSurroundings.Create());
